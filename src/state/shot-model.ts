import { computed, type ReadonlySignal } from '@preact/signals';
import type { Shot } from '../engine/aim/shot';
import { createShotAnswers, type ShotAnswers } from './shot-answers';
import { createShotHistory, type ShotHistory } from './shot-history';
import { createShotInputs, type ShotInputs } from './shot-inputs';
import type { ShotPorts } from './shot-ports';

/** The place Shot: what is asked, what the answer is, and how to change the question. */
export interface ShotModel
  extends ShotAnswers,
    Omit<ShotInputs, 'anyProblem' | 'forgetProblems'>,
    Omit<ShotHistory, 'change'> {
  readonly shot: ReadonlySignal<Shot>;
  /** Whether {@link lastAnswer} is not the answer to what now stands in the inputs. */
  readonly stale: ReadonlySignal<boolean>;
  /** Sets the present shot aside to compare with. */
  hold(): void;
  /** Exchanges the present shot and the held one. */
  swap(): void;
  release(): void;
}

/** Keeps the place Shot over the desk's shot. */
export function createShotModel(ports: ShotPorts): ShotModel {
  const { desk } = ports;
  const { change, undo, ...history } = createShotHistory(desk.shot, desk.setShot);
  const { anyProblem, forgetProblems, ...inputs } = createShotInputs(ports, change);
  const answers = createShotAnswers(ports);
  return {
    ...history,
    ...inputs,
    ...answers,
    shot: desk.shot,
    stale: computed(() => !answers.result.value.ok || anyProblem.value),
    undo() {
      forgetProblems();
      undo();
    },
    hold: desk.holdShot,
    swap() {
      const held = desk.heldShot.peek();
      if (!held) return;
      forgetProblems();
      desk.holdShot();
      change(held);
    },
    release: desk.dropHeldShot,
  };
}
