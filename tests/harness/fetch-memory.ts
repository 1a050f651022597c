import * as memory from '../../src/store/memory-store';

/** The store that keeps nothing, as the page has it come. */
export const fetchMemory = () => Promise.resolve(memory);
