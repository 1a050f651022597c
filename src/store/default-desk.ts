import { MODEL_VERSION } from '../engine/fit/model-version';
import { radOf } from '../units/angle-degrees';
import type { Choice, Desk, LaidShot, Pocket, Preferences } from './records';

/**
 * A worked example: a medium cut to the right with a little outside side, one that a club player
 * would expect to make more often than not with a strange cue, and nearly always with his own.
 */
export const DEFAULT_SHOT: LaidShot = {
  distanceM: 0.7,
  cutRad: radOf(24),
  side: -0.125,
  height: 0,
  elevationRad: radOf(3),
  speedMps: 1.8,
  headingRad: null,
};

/** Ids of the demo catalogue. */
export const DEFAULT_CHOICE: Choice = {
  cues: 'demo-cue-house',
  cloths: 'demo-cloth-club',
  balls: 'demo-balls-clean',
  tables: 'demo-table-9ft',
};

export const DEFAULT_PREFERENCES: Preferences = {
  lengthUnit: 'mm',
  distanceUnit: 'm',
  distanceFrom: 'ghost-ball',
  speedUnit: 'mps',
  cutUnit: 'degrees',
  tipUnit: 'tips',
  lead: 'object-ball',
  hand: 'right',
  theme: 'system',
};

/** A corner pocket's mouth lies within 114.3-117.5 mm (WPA equipment specification). */
export const DEFAULT_POCKET: Pocket = { distanceM: 0.5, mouthM: 0.116 };

/** What the very first visit opens with. */
export const DEFAULT_DESK: Desk = {
  shot: DEFAULT_SHOT,
  heldShot: null,
  recentShots: [],
  choice: DEFAULT_CHOICE,
  preferences: DEFAULT_PREFERENCES,
  pocket: DEFAULT_POCKET,
  // The first there is.
  playerId: '',
  law: MODEL_VERSION,
};
