/** Into how many parts the diamonds cut a table's length, and its width. */
export const DIAMONDS_ALONG = 8;
export const DIAMONDS_ACROSS = 4;
