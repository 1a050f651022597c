import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Pot } from '../engine/goal/goal';
import type { LaidShot } from '../store/records';
import { isSame } from '../store/same-value';
import type { SpeedScale } from '../units/speed-unit';
import { createFrameGate } from './frame-gate';
import { createHistory, type Gestures } from './history';
import { liesSo } from './lies-so';
import { createShotAnswers, type ShotAnswers } from './shot-answers';
import type { Asked } from './shot-field';
import { createShotInputs, type ShotInputs } from './shot-inputs';
import type { ShotPorts } from './shot-ports';
import { shownSpeed } from './shown-speed';

/** The place Shot: what is asked, what the answer is, and how to change the question. */
export interface ShotModel
  extends ShotAnswers,
    Omit<ShotInputs, 'hasShotProblem' | 'forgetProblems'>,
    Gestures {
  readonly shot: ReadonlySignal<LaidShot>;
  /** The unit in which speeds are shown. */
  readonly speedScale: ReadonlySignal<SpeedScale>;
  /**
   * Whether {@link lastAnswer} is not the answer to what now stands in the inputs, or may change by
   * itself.
   */
  readonly stale: ReadonlySignal<boolean>;
  /** Whether a finger is down on something of the shot. */
  readonly isHeld: ReadonlySignal<boolean>;
  readonly canUndo: ReadonlySignal<boolean>;
  undo(): void;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Makes the change last taken back again. */
  redo(): void;
  /** What the shot on screen was asked of, as long as it lies so; null where it lies nowhere. */
  readonly laid: ReadonlySignal<AskedOf | null>;
  /**
   * Asks something that was worked out elsewhere; it can be taken back as one change.
   * @param of null where it was asked of nothing that lies on a table
   */
  ask(asked: Asked, of: AskedOf | null): void;
  /** Sets the present shot aside to compare with. */
  hold(): void;
  /** Exchanges the present shot and the held one. */
  swap(): void;
  release(): void;
}

/** The ball that is played, and the pocket it is played into. */
export type AskedOf = Pick<Pot, 'ball' | 'pocket'>;

/** Keeps the place Shot over the desk's shot and pocket. */
export function createShotModel(ports: ShotPorts): ShotModel {
  const { desk } = ports;
  const speedScale = shownSpeed(ports);
  const asked = computed<Asked>(() => ({ shot: desk.shot.value, pocket: desk.pocket.value }));
  const history = createHistory<Asked>();
  const isHeld = signal(false);
  const sent = signal<{ readonly shot: LaidShot; readonly of: AskedOf | null } | null>(null);
  const gate = createFrameGate(ports.nextFrame, ports.frameTime);
  const set = ({ shot, pocket }: Asked) =>
    batch(() => {
      desk.setShot(shot);
      desk.setPocket(pocket);
    });
  const change = (part: Partial<Asked>) => {
    const before = asked.peek();
    const after = { ...before, ...part };
    if (isSame(before, after)) return;
    history.note(before, after);
    set(after);
  };
  const step = (take: (now: Asked) => Asked | null) => {
    gate.flush();
    forgetProblems();
    const [present, held] = [desk.shot.peek(), desk.heldShot.peek()];
    batch(() => {
      const other = take(asked.peek());
      if (other) set(other);
      // At the held shot: what is taken back, or made again, is an exchange of both sides.
      if (held && isSame(desk.shot.peek(), held)) desk.holdShot(present);
    });
  };
  const { hasShotProblem, forgetProblems, ...inputs } = createShotInputs(
    { ...ports, speedScale },
    asked,
    change,
  );
  const answers = createShotAnswers({ ...ports, speedScale }, isHeld);
  return {
    // A field that keeps the keyboard is under way until it is left, by a tap on Undo too.
    canUndo: computed(() => history.canUndo.value || history.isUnderWay.value),
    beginGesture(isFinger = false) {
      isHeld.value = isFinger;
      history.beginGesture();
    },
    // In one go: what waited for the hand is worked out once, for what stands in the end.
    endGesture: (isTakenAway = false) =>
      batch(() => {
        isHeld.value = false;
        gate.flush();
        if (!isTakenAway) return history.endGesture();
        const before = history.revertGesture(asked.peek());
        if (before) set(before);
      }),
    ...inputs,
    // What a finger says more often than it is shown is worked out once a frame.
    setFigure: (...to) => gate.take(() => inputs.setFigure(...to)),
    setTip: (...to) => gate.take(() => inputs.setTip(...to)),
    setCut: (...to) => gate.take(() => inputs.setCut(...to)),
    nudge(...by) {
      gate.flush();
      inputs.nudge(...by);
    },
    typeIn(...typed) {
      gate.flush();
      inputs.typeIn(...typed);
    },
    ...answers,
    shot: desk.shot,
    speedScale,
    isHeld,
    stale: computed(
      () => !answers.result.value.ok || hasShotProblem.value || !ports.isKitSettled.value,
    ),
    canRedo: history.canRedo,
    undo: () => step(history.undo),
    redo: () => step(history.redo),
    laid: computed(() => {
      const [was, now] = [sent.value, desk.shot.value];
      return was && liesSo(now, was.shot) ? was.of : null;
    }),
    ask(asked, of) {
      forgetProblems();
      sent.value = { shot: asked.shot, of };
      change(asked);
    },
    hold: () => desk.holdShot(),
    swap() {
      const held = desk.heldShot.peek();
      if (!held) return;
      forgetProblems();
      desk.holdShot();
      change({ shot: held });
    },
    release: desk.dropHeldShot,
  };
}
