import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { heldWithin } from '../engine/numerics/range';
import { MISCUE_LIMIT } from '../engine/stroke/miscue-limit';
import { checkRange } from '../units/check-range';
import { nudge } from '../units/nudge';
import { parseWithSide } from '../units/side-words';
import { tipScale } from '../units/tip-unit';
import { withCut } from './cut-field';
import type { Asked, FieldContext, ShotField, ShownShotField } from './shot-field';
import { type FieldName, shotField } from './shot-fields';
import type { ShotPorts } from './shot-ports';
import type { ShownSpeed } from './shown-speed';
import { steady } from './steady';

/** Something typed that cannot be used; the shot keeps its last good number. */
export interface FieldProblem {
  readonly text: string;
  /** One kind line, ready to show. */
  readonly message: string;
}

/** What is asked of the shot, as the person sees it, and the ways to change it. */
export interface ShotInputs {
  /** Each changes with what is shown of it alone. */
  readonly fields: { readonly [F in FieldName]: ReadonlySignal<ShownShotField> };
  readonly problems: { readonly [F in FieldName]: ReadonlySignal<FieldProblem | null> };
  /** Whether a number of the shot itself cannot be used. */
  readonly hasShotProblem: ReadonlySignal<boolean>;
  /** Whether one of the pocket cannot. */
  readonly hasPocketProblem: ReadonlySignal<boolean>;
  /** Where a cut goes: 1 right, −1 left. A straight shot keeps the side it last had. */
  readonly cutSign: ReadonlySignal<1 | -1>;
  /** How far from the centre the tip may touch before it slips, fractions of the radius. */
  readonly tipLimit: number;
  /** The unit in which the tip's place is told. */
  readonly tipScale: ReadonlySignal<ReturnType<typeof tipScale>>;
  /** Sets a figure in its shown unit, held within its range. */
  setFigure(name: FieldName, figure: number): void;
  /** Moves a figure to the next step, a long one where `coarse`. */
  nudge(name: FieldName, towards: 1 | -1, coarse?: boolean): void;
  /** Takes what was typed; a line in {@link problems} says what is wrong with it. */
  typeIn(name: FieldName, text: string): void;
  /** Forgets what was typed badly: the field shows its last good number again. */
  forgetProblem(name: FieldName): void;
  forgetProblems(): void;
  setCutSign(sign: 1 | -1): void;
  /** Sets the cut and its side at once, rad, + sends the object ball right. */
  setCut(cutRad: number): void;
  /** Sets where the tip touches, fractions of the radius, held to the miscue limit. */
  setTip(side: number, height: number): void;
}

/** @param change where a changed part of what is asked goes. */
export function createShotInputs(
  { desk, kit, tableLengthM, speedScale }: ShotPorts & ShownSpeed,
  asked: ReadonlySignal<Asked>,
  change: (part: Partial<Asked>) => void,
): ShotInputs {
  const lastSign = signal<1 | -1>(signOf(desk.shot.peek().cutRad) ?? 1);
  const cutSign = computed(() => signOf(desk.shot.value.cutRad) ?? lastSign.value);
  const context = computed<FieldContext>(() => ({
    preferences: desk.preferences.value,
    tableLengthM: tableLengthM.value,
    ballRadiusM: kit.value.ballRadiusM,
    tipRadiusM: kit.value.tipRadiusM,
    speedScale: speedScale.value,
    cutSign: cutSign.value,
  }));
  const asAsked = forEachField((name) =>
    computed(() => shotField(name, asked.value, context.value)),
  );
  const fields = forEachField((name) => steady(computed(() => shownOf(asAsked[name].value))));
  const problems = forEachField(() => signal<FieldProblem | null>(null));

  function take(part: Partial<Asked>): void {
    lastSign.value = signOf(part.shot?.cutRad ?? 0) ?? cutSign.peek();
    change(asLaid(asked.peek(), part));
  }
  function put(name: FieldName, figure: number): void {
    problems[name].value = null;
    const put = asAsked[name].peek().put(figure);
    if (put.ok) take(put.value);
  }
  function forgetProblems(): void {
    for (const problem of Object.values(problems)) problem.value = null;
  }

  return {
    fields,
    problems,
    hasShotProblem: computed(() => SHOT_FIELDS.some((name) => problems[name].value)),
    hasPocketProblem: computed(() => POCKET_FIELDS.some((name) => problems[name].value)),
    cutSign,
    tipLimit: MISCUE_LIMIT,
    tipScale: computed(() => tipScale(desk.preferences.value.tipUnit, kit.value)),
    forgetProblems,
    setFigure(name, figure) {
      put(name, heldWithin(fields[name].peek().range, figure));
    },
    nudge(name, towards, coarse = false) {
      const { facts, figure, range, usual } = fields[name].peek();
      const held = name === 'side' || name === 'height' ? usual : range;
      const step = coarse ? facts.coarseStep : facts.fineStep;
      put(name, nudge(figure, step, towards, held));
    },
    typeIn(name, text) {
      const field = asAsked[name].peek();
      const parsed = parseWithSide(text, field.facts);
      const ranged = parsed.ok ? checkRange(parsed.value, field.range, field.facts) : parsed;
      const taken = ranged.ok ? field.put(ranged.value) : ranged;
      problems[name].value = taken.ok ? null : { text, message: taken.message };
      if (taken.ok) take(taken.value);
    },
    forgetProblem(name) {
      problems[name].value = null;
    },
    setCutSign(sign) {
      lastSign.value = sign;
      const shot = desk.shot.peek();
      if (signOf(shot.cutRad) === -sign) {
        const turned = { ...context.peek(), cutSign: sign };
        take({ shot: withCut(shot, Math.abs(shot.cutRad), turned) });
      }
    },
    setCut(cutRad) {
      problems.cut.value = null;
      const turned = { ...context.peek(), cutSign: signOf(cutRad) ?? cutSign.peek() };
      take({ shot: withCut(desk.shot.peek(), Math.abs(cutRad), turned) });
    },
    setTip(side, height) {
      problems.side.value = null;
      problems.height.value = null;
      const shrink = Math.min(1, MISCUE_LIMIT / Math.max(Math.hypot(side, height), MISCUE_LIMIT));
      take({ shot: { ...desk.shot.peek(), side: side * shrink, height: height * shrink } });
    },
  };
}

/** What stays the very same while another number is changed. */
function shownOf({ put: _put, ...shown }: ShotField): ShownShotField {
  return shown;
}

const SHOT_FIELDS = ['distance', 'cut', 'side', 'height', 'elevation', 'speed'] as const;
const POCKET_FIELDS = ['pocket', 'mouth'] as const;

function forEachField<T>(make: (name: FieldName) => T): { readonly [F in FieldName]: T } {
  const names: readonly FieldName[] = [...SHOT_FIELDS, ...POCKET_FIELDS];
  return Object.fromEntries(names.map((name) => [name, make(name)])) as Record<FieldName, T>;
}

/**
 * What is changed by hand, as it then lies on the table. Another stroke at the same balls lies as it
 * did; with another distance, cut or way to the pocket the balls do not, and where is not said.
 */
function asLaid(before: Asked, part: Partial<Asked>): Partial<Asked> {
  const { shot, pocket } = { ...before, ...part };
  const isAsItLay =
    shot.distanceM === before.shot.distanceM &&
    shot.cutRad === before.shot.cutRad &&
    pocket.distanceM === before.pocket.distanceM;
  return isAsItLay ? part : { ...part, shot: { ...shot, headingRad: null } };
}

function signOf(cutRad: number): 1 | -1 | null {
  if (cutRad === 0) return null;
  return cutRad > 0 ? 1 : -1;
}
