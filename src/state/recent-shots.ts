import { effect, type ReadonlySignal } from '@preact/signals';
import type { Shot } from '../engine/direct/shot';
import { RAD_PER_DEG } from '../engine/numerics/angle';
import { MOST_RECENT_SHOTS } from '../store/parse-desk';
import type { LaidShot } from '../store/records';
import { isSame } from '../store/same-value';

/** Two shots that differ by no more than this in every input are one shot, tried out (our judgement). */
const ALIKE = {
  distanceM: 0.05,
  cutRad: RAD_PER_DEG,
  side: 0.05,
  height: 0.05,
  elevationRad: RAD_PER_DEG,
  speedMps: 0.1,
} as const;

/** The recent shots with another, which takes the place of those like it; the newest first. */
export function withRecentShot(recent: readonly Shot[], shot: Shot): readonly Shot[] {
  const [newest] = recent;
  if (newest && isSame(newest, shot)) return recent;
  const others = recent.filter((other) => !isAlike(other, shot));
  return [shot, ...others].slice(0, MOST_RECENT_SHOTS);
}

function isAlike(one: Shot, other: Shot): boolean {
  const names = Object.keys(ALIKE) as (keyof typeof ALIKE)[];
  return names.every((name) => Math.abs(one[name] - other[name]) <= ALIKE[name]);
}

export interface RecentShotsPorts {
  readonly lastAnswer: ReadonlySignal<{ readonly shot: LaidShot } | null>;
  /** Where they are kept. */
  readonly desk: { noteShot(shot: LaidShot): void };
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
}

/** Remembers every answered shot that a hand rested at; returns how to stop. */
export function noteRecentShots({ lastAnswer, desk, later }: RecentShotsPorts): () => void {
  let callOff = () => {};
  const stop = effect(() => {
    const answered = lastAnswer.value;
    callOff();
    if (answered) callOff = later(() => desk.noteShot(answered.shot));
  });
  return () => {
    callOff();
    stop();
  };
}
