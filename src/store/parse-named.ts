import { type Mend, mendLine, mendWord } from './mend';
import type { Named } from './records';

/** A longer name would not fit a phone's line. */
export const LONGEST_NAME = 60;

/** The key a record is stored under; it is checked before anything is mended. */
const keepId: Mend<string> = (was) => String(was);

/** Mends what every record has. Unknown origins count as the person's own. */
export function mendNamed(nameless: string): { readonly [K in keyof Named]: Mend<Named[K]> } {
  return {
    id: keepId,
    name: mendLine(LONGEST_NAME, nameless),
    origin: mendWord(['invented', 'by-hand'], 'by-hand'),
  };
}
