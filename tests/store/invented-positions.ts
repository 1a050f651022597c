import { directCut } from '../../src/engine/goal/goal';
import { NOTHING_CHOSEN, type SavedPosition } from '../../src/store/saved-position';

/** An invented position with all that one can say. */
export const BANK_POSITION: SavedPosition = {
  id: 'position-bank',
  name: 'Past the eight',
  origin: 'by-hand',
  lengthM: 2.54,
  widthM: 1.27,
  balls: [
    { name: 'cue', xM: -0.2, yM: -0.7 },
    { name: 8, xM: 0, yM: 0.1 },
    { name: 3, xM: 0.31, yM: 0.64 },
  ],
  goal: directCut(3, 'far-right'),
  zone: { xM: 0.1, yM: -0.2, radiusM: 0.25 },
  changedAtMs: 1_795_000_000_000,
};

/** Another, laid a minute later on a smaller table, with nothing to play yet. */
export const LATER_POSITION: SavedPosition = {
  ...BANK_POSITION,
  id: 'position-later',
  name: 'Two balls',
  lengthM: 1.9812,
  widthM: 0.9906,
  balls: [
    { name: 'cue', xM: 0, yM: -0.5 },
    { name: 1, xM: 0.2, yM: 0.4 },
  ],
  goal: NOTHING_CHOSEN,
  zone: null,
  changedAtMs: BANK_POSITION.changedAtMs + 60_000,
};

/** A bank that was kept to be played again; the student made one of two. */
export const KEPT_DRILL: SavedPosition = {
  ...BANK_POSITION,
  id: 'position-drill',
  name: '3 far right, bank off the left rail',
  zone: null,
  drill: {
    kind: 'bank',
    via: [
      { ball: 3, by: 'cue' },
      { cushion: 'left', by: 3 },
    ],
    stroke: { aimRad: 0.4, side: 0.1, height: 0, elevationRad: 0.05, speedMps: 2.1 },
    tries: [
      { playerId: 'player-student', atMs: BANK_POSITION.changedAtMs + 1000, went: true },
      { playerId: 'player-student', atMs: BANK_POSITION.changedAtMs + 2000, went: false },
    ],
  },
};
