import { MODEL_VERSION } from '../../engine/fit/model-version';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { Attempt } from '../../store/attempt';
import type { Choice } from '../../store/records';
import { MEASURE_PROBLEMS } from '../../words/measure-problems';
import { type EditResult, NOT_THERE } from '../edit-result';
import type { KeptRows } from '../kept-rows';
import { progressOf, withStepBack, withStepDone } from './attempt-progress';
import type { CueLengths } from './butt-height';
import { type ButtContext, type Entered, withCueLength, withEntered } from './enter-reading';

import type { MeasureModel } from './measure-model';

/** Every way to change an attempt. */
export type AttemptChanges = Pick<
  MeasureModel,
  | 'begin'
  | 'type'
  | 'finishStep'
  | 'enter'
  | 'stepBack'
  | 'strikeOut'
  | 'remove'
  | 'restore'
  | 'setCueLength'
>;

export interface ChangesPorts {
  readonly kept: KeptRows<Attempt>;
  readonly lengths: CueLengths;
  /** The records in play. */
  readonly choice: () => Choice;
  /** The sizes of what an attempt is played with. */
  readonly sizesOf: (attempt: Attempt) => ButtContext['kit'];
  readonly now: () => number;
  readonly newId: () => string;
}

const OK = { ok: true } as const;
const ALL_DONE = { ok: false, problem: MEASURE_PROBLEMS.allDone } as const;
const NOT_A_PRESS = { ok: false, problem: MEASURE_PROBLEMS.notAPress } as const;
const NOTHING_DONE = { ok: false, problem: MEASURE_PROBLEMS.nothingDone } as const;
const NOTHING_REMOVED = { ok: false, problem: MEASURE_PROBLEMS.nothingRemoved } as const;

/** Every change is kept at once. */
export function createAttemptChanges(ports: ChangesPorts): AttemptChanges {
  const { kept, lengths, sizesOf } = ports;
  const change = (id: string, edit: (attempt: Attempt) => Entered): EditResult => {
    const attempt = kept.find(id);
    if (attempt === null) return NOT_THERE;
    const edited = edit(attempt);
    if (!edited.ok) return edited;
    kept.put(edited.attempt);
    return OK;
  };
  const changed = (attempt: Attempt): Entered => ({ ok: true, attempt });

  return {
    begin(shot) {
      const attempt = freshAttempt(shot, ports.choice(), ports.newId(), ports.now());
      kept.put(attempt);
      return attempt.id;
    },
    type(id, text) {
      change(id, (attempt) => {
        const { now } = progressOf(attempt);
        return now ? changed({ ...attempt, typed: { step: now.name, text } }) : ALL_DONE;
      });
    },
    finishStep: (id) =>
      change(id, (attempt) => {
        const { now } = progressOf(attempt);
        if (now === null) return ALL_DONE;
        return now.kind === 'done' ? changed(withStepDone(attempt, now)) : NOT_A_PRESS;
      }),
    enter: (id, value) =>
      change(id, (attempt) => {
        const { now } = progressOf(attempt);
        const context = { cueLengthM: lengths.of(attempt), kit: sizesOf(attempt) };
        return now ? withEntered(attempt, now, value, context) : ALL_DONE;
      }),
    stepBack: (id) =>
      change(id, (attempt) => {
        const back = withStepBack(attempt);
        return back ? changed(back) : NOTHING_DONE;
      }),
    setCueLength(id, lengthM) {
      const attempt = kept.find(id);
      if (attempt === null) return NOT_THERE;
      const fits = withCueLength(attempt, lengthM, sizesOf(attempt));
      if (!fits.ok) return fits;
      lengths.say(attempt.choice.cues, lengthM);
      if (attempt.butt) kept.put(fits.attempt);
      return OK;
    },
    strikeOut: (id, isStruckOut) => change(id, (attempt) => changed({ ...attempt, isStruckOut })),
    remove(id) {
      if (kept.find(id) === null) return NOT_THERE;
      kept.remove(id);
      return OK;
    },
    restore: () => (kept.putBack() ? OK : NOTHING_REMOVED),
  };
}

/** An attempt at a shot of a trial, of which nothing is done yet. */
export function freshAttempt(
  shot: TrialShot,
  choice: Choice,
  id: string,
  startedAtMs: number,
): Attempt {
  return {
    id,
    startedAtMs,
    modelVersion: MODEL_VERSION,
    choice,
    shot,
    readings: {},
    butt: null,
    stepsDone: [],
    typed: null,
    isStruckOut: false,
  };
}
