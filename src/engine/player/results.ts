/**
 * What became of a shot: it went, or the object ball passed thin or full of its target (left or right
 * of it where there is no cut), stopped before it, or was not touched.
 */
export const RESULTS = ['went', 'thin', 'full', 'left', 'right', 'short', 'untouched'] as const;

/** Where the cue ball stopped, beside where it was to rest. */
export const STOPS = ['in', 'short', 'long'] as const;
