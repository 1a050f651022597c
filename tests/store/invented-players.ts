import { directCut } from '../../src/engine/goal/goal';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { UNMEASURED } from '../../src/engine/kit/kit-spread';
import type { PlayedShot, Player } from '../../src/store/player';

/** An invented student who has answered the question. */
export const STUDENT: Player = {
  id: 'player-student',
  name: 'Student “A”',
  madeOf10: 6,
  wasAsked: true,
  createdAtMs: 1_795_000_000_000,
  changedAtMs: 1_795_000_000_500,
};

/** Another, made a minute later, of whom nothing is known. */
export const NEWCOMER: Player = {
  ...STUDENT,
  id: 'player-newcomer',
  name: 'Newcomer',
  madeOf10: null,
  wasAsked: false,
  createdAtMs: STUDENT.createdAtMs + 60_000,
};

/** An invented shot of the student's with all that one can say: laid on a table, full, and scratched. */
export const LAID_SHOT: PlayedShot = {
  id: 'played-laid',
  playerId: STUDENT.id,
  atMs: 1_796_000_000_000,
  modelVersion: 3,
  shot: {
    distanceM: 0.7,
    cutRad: 0.42,
    side: -0.125,
    height: 0.1,
    elevationRad: 0.05,
    speedMps: 1.8,
    objectDistanceM: 0.5,
  },
  aimRad: -0.031,
  target: {
    kind: 'mouth',
    distanceM: 0.5,
    mouthM: 0.12,
    openings: [
      { speedMps: 0.8, midM: 0.001, halfM: 0.031 },
      { speedMps: 3, midM: 0, halfM: 0.022 },
    ],
  },
  kit: { ...DEFAULT_KIT, massRatio: 27 },
  spread: { ...UNMEASURED, massRatio: 0.05 },
  position: {
    lengthM: 2.54,
    widthM: 1.27,
    balls: [
      { name: 'cue', xM: -0.2, yM: -0.7 },
      { name: 3, xM: 0.31, yM: 0.64 },
    ],
    goal: directCut(3, 'far-right'),
    stroke: { aimRad: 0.35, side: -0.125, height: 0.1, elevationRad: 0.05, speedMps: 1.8 },
  },
  result: 'full',
  scratched: true,
  cueBall: { x: 0.1, y: -0.4 },
  asMeant: true,
  testId: 'test-1',
  drill: null,
};

/** The same shot asked without a table a minute later: it went. */
export const PLAIN_SHOT: PlayedShot = {
  ...LAID_SHOT,
  id: 'played-plain',
  atMs: LAID_SHOT.atMs + 60_000,
  target: { kind: 'angle', halfAngleRad: 0.06 },
  position: null,
  result: 'went',
  scratched: false,
  cueBall: null,
  testId: null,
};

/** The same as a try on a ladder, on which the cue ball was to stop on a spot, and rolled past it. */
export const DRILL_SHOT: PlayedShot = {
  ...LAID_SHOT,
  id: 'played-drill',
  atMs: LAID_SHOT.atMs + 120_000,
  result: 'went',
  scratched: false,
  cueBall: null,
  testId: null,
  drill: {
    id: 'speed',
    rung: {
      chance: 0.68,
      room: 0.1,
      rest: { xM: 0.3175, yM: 0.9525, radiusM: 0.057, low: -0.11, high: 0.09 },
      stopped: 'long',
    },
  },
};
