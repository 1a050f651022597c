/** The units a player may ask for; SI and radians everywhere else. */
export type LengthUnit = 'mm' | 'cm' | 'in';
/** Diamonds and table lengths are those of the chosen table. */
export type DistanceUnit = 'm' | 'cm' | 'ft' | 'in' | 'diamonds' | 'table-lengths';
/** `lengths`: how many lengths of the chosen table a ball rolling at that speed runs. */
export type SpeedUnit = 'mps' | 'kmh' | 'mph' | 'lengths';
/** `ball-hit`: the share of the object ball that the cue ball covers, 1 full to 0 a graze. */
export type CutUnit = 'degrees' | 'ball-hit';
/** `clock`: the hour on the cue ball's face, and how far out in tips. */
export type TipUnit = 'tips' | 'clock' | 'radii';
/** What a sideways figure is told from. */
export type AimMark = 'object-ball' | 'ghost-ball';
