import { RAD_PER_DEG } from '../numerics/angle';
import type { SpeedWindow } from './known-player';
import type { LevelTable } from './level-test';
import type { AskedShot } from './shot-line';
import { speedShots } from './speed-shots';

/** A shot, and where its cue ball is to rest where that is asked. */
export interface LimitShot extends AskedShot {
  readonly rest: SpeedWindow | null;
}

type Ordinary = readonly [
  distanceM: number,
  cutDeg: number,
  toMouthM: number,
  side: number,
  speedMps: number,
];

/** Shots such as anybody plays in an evening (invented): near and far, soft and firm, three with side. */
const ORDINARY: readonly Ordinary[] = [
  [0.4, 0, 0.6, 0, 1.2],
  [0.8, 15, 0.9, 0, 1.8],
  [0.8, -30, 0.7, 0, 1.8],
  [1.2, 20, 1.1, 0, 2],
  [0.5, 45, 0.5, 0, 1.4],
  [0.7, -20, 0.8, 0.25, 1.8],
  [1, 35, 0.6, -0.25, 1.8],
  [0.6, -5, 1, 0.2, 1.6],
];
const MOUTH_M = 0.116;
/** Of those after which the cue ball is to stop on a spot: a hand's width either way, near and far. */
const [SPOT_BALLS, SPOTS] = [2, 2];

/** What stands for somebody's own shots until enough of those are logged: ten on most tables. */
export function ordinaryShots(table: LevelTable): readonly LimitShot[] {
  const { kit, spread } = table;
  const onSpots = speedShots(table, [SPOT_BALLS]).filter(({ goal }) =>
    goal.pocket.endsWith('right'),
  );
  return [
    ...ORDINARY.map(
      ([distanceM, cutDeg, toMouthM, side, speedMps]): LimitShot => ({
        shot: {
          distanceM,
          cutRad: cutDeg * RAD_PER_DEG,
          side,
          height: 0,
          elevationRad: 3 * RAD_PER_DEG,
          speedMps,
        },
        target: { kind: 'mouth', distanceM: toMouthM, mouthM: MOUTH_M },
        kit,
        spread,
        rest: null,
      }),
    ),
    ...onSpots.slice(-SPOTS).map(({ shot, target, kit, spread, rest }) => {
      return { shot, target, kit, spread, rest };
    }),
  ];
}
