import type { BallState } from '../../ball/ball-state';
import { afterCushion } from '../../impacts/cushion';
import { strike } from '../../impacts/strike';
import type { Kit } from '../../kit/kit';
import { ballCrossing, lineCrossing } from '../../motion/line-crossing';
import { runOf } from '../../motion/run';
import type { Stroke } from '../../stroke/stroke';
import { CENTRE_HIT, fromDiamond, spoken } from './set-up';
import { type Readings, SPEED_WORDS, type Trial, type TrialSetup } from './trial';
import { TRIAL_TRAITS } from './trial-traits';

/** More cushions than the hardest stroke reaches. */
const MOST_CUSHIONS = 12;

/** A stroke up the table, cushions counted: how far it runs tells how hard a player's word is. */
export const SPEED = {
  name: 'speed',
  ...TRIAL_TRAITS.speed,
  predict: predictRun,
  shots: (bed) =>
    SPEED_WORDS.map((word) => ({
      stroke: { ...CENTRE_HIT, ...spoken(word) },
      setup: fromDiamond(1, bed),
    })),
  hangsOn: ['distanceM', 'bedLengthM'],
} as const satisfies Trial;

/**
 * How far a cue ball played straight up the table runs in all, cushions counted, until it rests; and
 * when it touches the far rail, if it does. Null where it would never rest.
 */
export function predictRun(kit: Kit, stroke: Stroke, setup: TrialSetup): Readings | null {
  const acrossM = setup.bedLengthM - 2 * kit.ballRadiusM;
  let ball = strike({ ...stroke, aimRad: 0 }, kit);
  let runM = 0;
  let timeS: number | undefined;
  for (let cushions = 0; cushions < MOST_CUSHIONS; cushions++) {
    const up = cushions % 2 === 0 ? 1 : -1;
    const toM = cushions === 0 ? setup.distanceM : acrossM;
    const run = runTo(ball, toM, up, kit);
    if (run.atCushion === null) {
      const readings = { runM: runM + run.wayM };
      return timeS === undefined ? readings : { ...readings, timeS };
    }
    timeS ??= run.timeS;
    runM += toM;
    ball = afterCushion(run.atCushion, 0, up, kit);
  }
  return null;
}

/** @param up +1 up the table, −1 back down */
function runTo(ball: BallState, toM: number, up: number, kit: Kit) {
  const run = runOf(ball, 0, kit);
  const line = { fromXM: ball.xM, fromYM: ball.yM, alongRad: up > 0 ? 0 : Math.PI, distanceM: toM };
  const crossing = lineCrossing(run, line);
  if (crossing === null) return { atCushion: null, wayM: Math.abs(run.end.yM - ball.yM) };
  return { atCushion: ballCrossing(run, crossing), wayM: toM, timeS: crossing.timeS };
}
