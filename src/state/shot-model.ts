import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { AimAnswer, AimResult, Shot } from '../engine/aim/shot';
import type { Kit } from '../engine/model/kit';
import { MISCUE_LIMIT } from '../engine/model/miscue-limit';
import { checkRange } from '../units/check-range';
import { nudge } from '../units/nudge';
import { parseNumber } from '../units/parse-number';
import type { FieldContext, FieldName, ShotField } from './shot-fields';
import { shotField, withCut } from './shot-fields';
import { createShotHistory } from './shot-history';
import type { PathPoint, ShotPorts } from './shot-ports';
import { type ShotWarning, shotWarnings } from './shot-warnings';

/** An answer, and the shot and kit it is the answer to. */
export interface Answered {
  readonly shot: Shot;
  readonly kit: Kit;
  readonly answer: AimAnswer;
}

/** Something typed that cannot be used; the shot keeps its last good number. */
export interface FieldProblem {
  readonly text: string;
  /** One kind line, ready to show. */
  readonly message: string;
}

/** The shot set aside, its answer, and how the present aim differs from it. */
export interface Comparison {
  readonly shot: Shot;
  readonly result: AimResult;
  /** The present aim line less the held one, right +; null unless both have an answer. */
  readonly change: { readonly onObjectBallM: number; readonly offsetM: number } | null;
}

/** The place Shot: what is asked, what the answer is, and how to change the question. */
export interface ShotModel {
  readonly shot: ReadonlySignal<Shot>;
  readonly fields: { readonly [F in FieldName]: ReadonlySignal<ShotField> };
  readonly problems: { readonly [F in FieldName]: ReadonlySignal<FieldProblem | null> };
  /** Where a cut goes: 1 right, −1 left. A straight shot keeps the side it last had. */
  readonly cutSign: ReadonlySignal<1 | -1>;
  readonly result: ReadonlySignal<AimResult>;
  /** The latest answer there was, which a refusal or a bad number leaves standing. */
  readonly lastAnswer: ReadonlySignal<Answered | null>;
  /** Whether {@link lastAnswer} is not the answer to what now stands in the inputs. */
  readonly stale: ReadonlySignal<boolean>;
  /** The cue ball's way to the object ball, of {@link lastAnswer}. */
  readonly path: ReadonlySignal<readonly PathPoint[]>;
  readonly warnings: ReadonlySignal<readonly ShotWarning[]>;
  /** Where the object ball would go, right of the straight line, with the cue on the straight line. */
  readonly uncorrected: ReadonlySignal<AimResult | null>;
  readonly comparison: ReadonlySignal<Comparison | null>;
  readonly canUndo: ReadonlySignal<boolean>;

  /** Sets a figure in its shown unit, held within its range. */
  setFigure(name: FieldName, figure: number): void;
  /** Moves a figure to the next step, a long one where `coarse`. */
  nudge(name: FieldName, towards: 1 | -1, coarse?: boolean): void;
  /** Takes what was typed; a line in {@link problems} says what is wrong with it. */
  typeIn(name: FieldName, text: string): void;
  /** Forgets what was typed badly: the field shows its last good number again. */
  forgetProblem(name: FieldName): void;
  setCutSign(sign: 1 | -1): void;
  /** Sets where the tip touches, fractions of the radius, held to the miscue limit. */
  setTip(side: number, height: number): void;
  /** Changes until {@link endGesture} are undone as one. */
  beginGesture(): void;
  /** @param revert also takes back what the gesture changed. */
  endGesture(revert?: boolean): void;
  undo(): void;
  hold(): void;
  /** Exchanges the present shot and the held one. */
  swap(): void;
  release(): void;
}

/** Enough for a smooth curve on a phone. */
const PATH_SAMPLES = 40;

/** Keeps the place Shot over the desk's shot. */
export function createShotModel(ports: ShotPorts): ShotModel {
  const { desk, kit, solve } = ports;
  const history = createShotHistory(desk.shot, desk.setShot);
  const lastSign = signal<1 | -1>(desk.shot.peek().cutRad < 0 ? -1 : 1);
  const cutSign = computed(() => signOf(desk.shot.value.cutRad) ?? lastSign.value);
  const context = computed<FieldContext>(() => ({
    preferences: desk.preferences.value,
    tableLengthM: ports.tableLengthM.value,
    ballRadiusM: kit.value.ballRadiusM,
    cutSign: cutSign.value,
  }));
  const fields = forEachField((name) =>
    computed(() => shotField(name, desk.shot.value, context.value)),
  );
  const problems = forEachField(() => signal<FieldProblem | null>(null));

  const result = computed(() => solve(desk.shot.value, kit.value));
  const lastAnswer = rememberAnswer(desk.shot, kit, result);
  const anyProblem = computed(() => Object.values(problems).some((problem) => problem.value));

  function change(shot: Shot): void {
    const sign = signOf(shot.cutRad);
    if (sign) lastSign.value = sign;
    history.change(shot);
  }

  function put(name: FieldName, figure: number): void {
    problems[name].value = null;
    const put = fields[name].peek().put(figure);
    if (put.ok) change(put.value);
  }

  return {
    shot: desk.shot,
    fields,
    problems,
    cutSign,
    result,
    lastAnswer,
    stale: computed(() => !result.value.ok || anyProblem.value),
    path: computed(() => {
      const last = lastAnswer.value;
      return last ? ports.trace(last.shot, last.kit, last.answer.aimRad, PATH_SAMPLES) : [];
    }),
    warnings: computed(() => {
      const answer = result.value;
      return answer.ok ? shotWarnings(desk.shot.value, kit.value, answer, solve) : [];
    }),
    uncorrected: computed(() => {
      const last = lastAnswer.value;
      return last ? ports.play(last.shot, last.kit, 0) : null;
    }),
    comparison: computed(() => compare(desk.heldShot.value, result.value, kit.value, solve)),
    canUndo: history.canUndo,

    setFigure(name, figure) {
      const { min, max } = fields[name].peek().range;
      put(name, Math.min(max, Math.max(min, figure)));
    },
    nudge(name, towards, coarse = false) {
      const { facts, figure, range, usual } = fields[name].peek();
      const held = name === 'side' || name === 'height' ? usual : range;
      const step = coarse ? facts.coarseStep : facts.fineStep;
      put(name, nudge(figure, step, towards, held));
    },
    typeIn(name, text) {
      const field = fields[name].peek();
      const parsed = parseNumber(text, field.facts.symbol);
      const ranged = parsed.ok ? checkRange(parsed.value, field.range, field.facts) : parsed;
      const taken = ranged.ok ? field.put(ranged.value) : ranged;
      problems[name].value = taken.ok ? null : { text, message: taken.message };
      if (taken.ok) change(taken.value);
    },
    forgetProblem(name) {
      problems[name].value = null;
    },
    setCutSign(sign) {
      lastSign.value = sign;
      const shot = desk.shot.peek();
      if (signOf(shot.cutRad) === -sign) {
        change(withCut(shot, Math.abs(shot.cutRad), { ...context.peek(), cutSign: sign }));
      }
    },
    setTip(side, height) {
      problems.side.value = null;
      problems.height.value = null;
      const shrink = Math.min(1, MISCUE_LIMIT / Math.max(Math.hypot(side, height), MISCUE_LIMIT));
      change({ ...desk.shot.peek(), side: side * shrink, height: height * shrink });
    },
    beginGesture: history.beginGesture,
    endGesture: history.endGesture,
    undo: history.undo,
    hold: desk.holdShot,
    swap() {
      const held = desk.heldShot.peek();
      if (!held) return;
      desk.holdShot();
      change(held);
    },
    release: desk.dropHeldShot,
  };
}

function forEachField<T>(make: (name: FieldName) => T): { readonly [F in FieldName]: T } {
  return {
    distance: make('distance'),
    cut: make('cut'),
    side: make('side'),
    height: make('height'),
    elevation: make('elevation'),
    speed: make('speed'),
  };
}

function signOf(cutRad: number): 1 | -1 | null {
  if (cutRad === 0) return null;
  return cutRad > 0 ? 1 : -1;
}

function rememberAnswer(
  shot: ReadonlySignal<Shot>,
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

function compare(
  held: Shot | null,
  present: AimResult,
  kit: Kit,
  solve: ShotPorts['solve'],
): Comparison | null {
  if (!held) return null;
  const result = solve(held, kit);
  const change =
    result.ok && present.ok
      ? {
          onObjectBallM: present.aimOnObjectBallM - result.aimOnObjectBallM,
          offsetM: present.aimOffsetM - result.aimOffsetM,
        }
      : null;
  return { shot: held, result, change };
}
