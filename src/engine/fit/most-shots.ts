/** As many shots as are fitted at once: they take half a minute. */
export const MOST_SHOTS = 400;
