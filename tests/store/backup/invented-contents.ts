import type { Contents } from '../../../src/store/contents';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import type { Cue } from '../../../src/store/records';
import { CURVE_ATTEMPT, LATER_ATTEMPT } from '../invented-attempts';
import { DRILL_SHOT, LAID_SHOT, NEWCOMER, PLAIN_SHOT, STUDENT } from '../invented-players';
import { BANK_POSITION, LATER_POSITION } from '../invented-positions';

/** An invented cue with a past. */
export const MY_CUE: Cue = {
  id: 'mine',
  name: 'My “good” cue – №1',
  origin: 'by-hand',
  changes: [{ atMs: 1_780_000_000_000, what: 'new tip' }],
  like: 'demo-cue-low',
  massRatio: 27,
  tipDiameterM: 0.0127,
  tipRadiusM: 0.0097,
};

/** What a player may have after some weeks: a cue of their own, trials, positions, shots played, rows set aside. */
export const CONTENTS: Contents = {
  desk: {
    ...DEFAULT_DESK,
    choice: { ...DEFAULT_DESK.choice, cues: 'mine' },
    shot: { ...DEFAULT_DESK.shot, headingRad: 0.3 },
    heldShot: { ...DEFAULT_DESK.shot, headingRad: -2 },
    recentShots: [DEFAULT_DESK.shot, { ...DEFAULT_DESK.shot, side: -0 }],
  },
  ...DEMO_CATALOGUE,
  cues: [...DEMO_CATALOGUE.cues, MY_CUE],
  attempts: [CURVE_ATTEMPT, LATER_ATTEMPT],
  positions: [LATER_POSITION, BANK_POSITION],
  players: [STUDENT, NEWCOMER],
  played: [LAID_SHOT, PLAIN_SHOT, DRILL_SHOT],
  setAside: [
    { store: 'cues', raw: { ...MY_CUE, massRatio: Number.NaN }, reason: 'repaired' },
    { store: 'desk', raw: 'scribble', reason: 'not-a-record' },
  ],
};
