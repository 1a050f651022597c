/** As many as the fullest game has, and some to spare. */
export const MOST_BALLS = 24;
