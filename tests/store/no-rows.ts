import type { Lists } from '../../src/store/contents';
import { ofLists } from '../../src/store/stores';

/** Every list, with nothing in it. */
export const NO_ROWS: Lists = ofLists<'rows'>(() => []);
