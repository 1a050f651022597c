import { effect, type ReadonlySignal } from '@preact/signals';
import type { DeskModel } from './desk-model';
import type { Answered } from './shot-answers';

export interface RecentShotsPorts {
  readonly lastAnswer: ReadonlySignal<Answered | null>;
  readonly desk: Pick<DeskModel, 'noteShot'>;
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
