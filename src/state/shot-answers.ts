import { computed, type ReadonlySignal } from '@preact/signals';
import type { AimAnswer, AimResult } from '../engine/direct/shot';
import type { Kit } from '../engine/kit/kit';
import type { LaidShot } from '../store/records';
import { atRest } from './at-rest';
import { type Comparison, compareShots } from './shot-comparison';
import type { PathPoint, ShotPorts } from './shot-ports';
import { type ShotWarning, shotWarnings } from './shot-warnings';
import type { ShownSpeed } from './shown-speed';
import { speedRemedy } from './speed-remedy';
import { steady } from './steady';

/** An answer, and the shot and kit it is the answer to. */
export interface Answered {
  readonly shot: LaidShot;
  readonly kit: Kit;
  readonly answer: AimAnswer;
}

/** All that follows from the shot and the kit. */
export interface ShotAnswers {
  readonly result: ReadonlySignal<AimResult>;
  /** The latest answer there was, which a refusal or a bad number leaves standing. */
  readonly lastAnswer: ReadonlySignal<Answered | null>;
  /** The cue ball's way to the object ball, of {@link lastAnswer}. */
  readonly path: ReadonlySignal<readonly PathPoint[]>;
  readonly warnings: ReadonlySignal<readonly ShotWarning[]>;
  /** A speed, in the person's unit, at which a refused shot goes; null where none is told. */
  readonly remedySpeed: ReadonlySignal<number | null>;
  /** What would come of {@link lastAnswer}'s shot with the cue on the straight line. */
  readonly uncorrected: ReadonlySignal<AimResult | null>;
  readonly comparison: ReadonlySignal<Comparison | null>;
}

/** Enough for a smooth curve on a phone. */
const PATH_SAMPLES = 40;

/**
 * Works out each of them when it is first read after a change. What the moving picture does not need
 * waits until the hand rests: while a finger is down it stands as it was.
 */
export function createShotAnswers(
  ports: ShotPorts & ShownSpeed,
  isHeld: ReadonlySignal<boolean>,
): ShotAnswers {
  const { desk, kit, solve, play, trace, speedScale } = ports;
  const result = computed(() => solve(desk.shot.value, kit.value));
  const heldAnswer = computed(() => {
    const shot = desk.heldShot.value;
    return shot && { shot, result: solve(shot, ports.kitAlong(shot.headingRad)) };
  });
  const lastAnswer = rememberAnswer(desk.shot, kit, result);
  return {
    result,
    lastAnswer,
    path: computed(() => {
      const last = lastAnswer.value;
      return last ? trace(last.shot, last.kit, last.answer.aimRad, PATH_SAMPLES) : [];
    }),
    warnings: atRest(
      steady(
        computed(() => {
          const answer = result.value;
          if (!ports.isKitSettled.value || !answer.ok) return [];
          const tableLengthM = ports.tableLengthM.value;
          return shotWarnings(desk.shot.value, kit.value, answer, solve, tableLengthM);
        }),
      ),
      isHeld,
    ),
    remedySpeed: computed(() => {
      if (result.value.ok || result.value.reason === 'beyond-miscue-limit') return null;
      const target = { kind: 'mouth', ...desk.pocket.value } as const;
      const { nearestSpeed, goes } = ports;
      return speedRemedy(desk.shot.value, kit.value, target, speedScale.value, nearestSpeed, goes);
    }),
    uncorrected: atRest(
      computed(() => {
        const last = lastAnswer.value;
        return last ? play(last.shot, last.kit, 0) : null;
      }),
      isHeld,
    ),
    comparison: computed(() => {
      const held = heldAnswer.value;
      return held && compareShots(held.shot, held.result, result.value);
    }),
  };
}

function rememberAnswer(
  shot: ReadonlySignal<LaidShot>,
  kit: ReadonlySignal<Kit>,
  result: ReadonlySignal<AimResult>,
): ReadonlySignal<Answered | null> {
  let last: Answered | null = null;
  return computed(() => {
    const answer = result.value;
    if (answer.ok) last = { shot: shot.value, kit: kit.value, answer };
    return last;
  });
}
