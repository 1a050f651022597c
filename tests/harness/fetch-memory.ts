/** The store that keeps nothing, as the page has it come. */
export const fetchMemory = () => import('../../src/store/memory-store');
