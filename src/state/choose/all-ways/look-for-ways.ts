import type { FanPlay } from '../../../engine/plan/ranked-way';
import type { FoundWay } from '../../../engine/ways/found-way';
import type { PickRule } from '../../../engine/ways/pick-ways';
import type { ToldWay } from '../../../engine/ways/refine-found';
import type { StretchFound } from '../../../engine/ways/stretch-found';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import type { NoWay } from '../../../engine/ways/why-none';
import type { Work } from '../../../worker/engine-pool';
import { inTurn } from './in-turn';

/** A way as it is shown: worked out in full, and played out. */
export interface ShownWay {
  /** Tells it from every other. */
  readonly key: string;
  readonly told: ToldWay;
  readonly fan: readonly FanPlay[];
}

/** What a search came to. */
export interface AllFound {
  /** The likeliest first. */
  readonly ways: readonly ShownWay[];
  /** Why there is none of some kinds. */
  readonly none: readonly NoWay[];
}

/** Told of how far a search has come. */
export interface LookHooks {
  onProgress(done: number, of: number): void;
  /** One more is known; always in the same order. */
  onWay(way: ShownWay): void;
}

/** As many as a person would look through; of every kind and pocket some, be their chance low. */
export const RULE: PickRule = { most: 24, keepsLow: true };

/** The first ways are told after so many parts, and so many of them. */
const EARLY_PARTS = 6;
const EARLY_RULE: PickRule = { ...RULE, most: 3 };
/** Enough for every worker there may be, and so few that what is shown soon waits for little. */
const AT_ONCE = 6;

/**
 * Looks for all ways to play a position. Parts of the search are dealt to the workers in order and put
 * together in order, so what comes out is the same whoever was done first. Rejected as soon as any
 * part is.
 */
export async function lookForWays(
  question: WaysQuestion,
  work: Work,
  signal: AbortSignal,
  hooks: LookHooks,
): Promise<AllFound> {
  /** By what was found, and by what it was worked out to: that betters a stroke. */
  const worked = new Map<string, ShownWay>();
  const known = new Map<string, ShownWay>();
  const stretches = await work('waysParts', question, signal);
  let done = 0;
  const step = (of: number) => hooks.onProgress(++done, of);
  const workOut = async (way: FoundWay): Promise<ShownWay> => {
    const found = keyOf(way);
    const before = worked.get(found);
    if (before) return before;
    const told = await work('waysRefine', { question, way }, signal);
    const fan = await work('waysFan', { question, told }, signal);
    const shown = { key: keyOfTold(told), told, fan };
    worked.set(found, shown);
    return shown;
  };
  const tell = (way: ShownWay) => {
    if (known.has(way.key)) return;
    known.set(way.key, way);
    hooks.onWay(way);
  };
  const show = async (
    parts: readonly StretchFound[],
    rule: PickRule,
    also = (_of: number) => {},
  ) => {
    const found = parts.flatMap(({ ways }) => ways);
    const picked = await work('waysPick', { found, rule }, signal);
    return inTurn(picked, AT_ONCE, workOut, (way) => {
      tell(way);
      also(stretches.length + picked.length);
    });
  };
  const early = { parts: [] as StretchFound[], shown: Promise.resolve<unknown>(null) };
  const parts = await inTurn(
    stretches,
    AT_ONCE,
    (stretch) => work('waysSearch', { question, stretch }, signal),
    (part) => {
      step(stretches.length + RULE.most);
      if (early.parts.push(part) !== EARLY_PARTS) return;
      early.shown = show([...early.parts], EARLY_RULE);
      // Whoever waits for it below is told.
      early.shown.catch(() => {});
    },
  );
  await early.shown;
  const shown = await show(parts, RULE, step);
  const refined = shown.map(({ told }) => told);
  const ordered = await work('waysTell', { refined, rule: RULE }, signal);
  const none = await work('waysNone', { question, parts }, signal);
  return { ways: ordered.flatMap((told) => known.get(keyOfTold(told)) ?? []), none };
}

type Identified = Pick<FoundWay, 'goal' | 'headingRad' | 'stroke'>;

/** Workers give copies: a way is known by what it does, and by its stroke. */
function keyOf({ goal, headingRad, stroke }: Identified): string {
  const { kind, ball, pocket, via } = goal;
  const steps = via.map((step) => `${step.by}${'ball' in step ? step.ball : step.cushion}`);
  const { aimRad, side, height, elevationRad, speedMps } = stroke;
  return [kind, ball, pocket, ...steps, headingRad, aimRad, side, height, elevationRad, speedMps]
    .join(' ')
    .replaceAll(/(\.\d{9})\d+/g, '$1');
}

function keyOfTold({ goal, headingRad, option: { stroke } }: ToldWay): string {
  return keyOf({ goal, headingRad, stroke });
}
