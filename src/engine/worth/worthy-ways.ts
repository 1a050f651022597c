import { playLaid } from '../goal/laid-table';
import { atUsualPace } from '../room/drawn-stroke';
import { DRAWS, overTable } from '../ways/drawn-chance';
import type { FoundWay } from '../ways/found-way';
import { improved } from '../ways/improve';
import { type PickRule, waysToRefine, waysToTell } from '../ways/pick-ways';
import { type ToldWay, workOut } from '../ways/refine-found';
import { type SlopeTurn, slopeTurn } from '../ways/slope-turn';
import { askedFor, type WaysQuestion } from '../ways/ways-question';
import type { ToldSafety } from './safety';
import { StrokeJudge } from './stroke-worth';
import { type Worth, worthFrom } from './worth';

/** A way worked out in full, with what it is worth: plain data. */
export interface WorthyWay extends ToldWay {
  readonly worth: Worth;
  /** Left out where the bed is level, or no straight line tells. */
  readonly slope?: SlopeTurn;
}

/** What ways are ordered by: what they are worth, or how often they go and keep the cue ball. */
export type WaysOrder = 'worth' | 'goes';

/** Works a way out in full, with the stroke near by that goes most often. */
export function refineWorthy(question: WaysQuestion, found: FoundWay, draws = DRAWS): WorthyWay {
  return tellWorthy(question, improved(question, found), draws);
}

/** Works a way out in full with the very stroke that it has, and what it is worth, from the same drawn strokes. */
export function tellWorthy(question: WaysQuestion, way: FoundWay, draws = DRAWS): WorthyWay {
  const { told, all } = workOut(question, way, draws);
  const slope = slopeTurn(question, way);
  return { ...told, worth: worthFrom(question, way, all), ...(slope && { slope }) };
}

/** Of ways found so many times as many are looked at as are wanted. */
const LOOKED_AT = 6;
/** Of a kind so many at least are worked out, as far as there are. */
const LEAST_OF_A_KIND = 1;

/**
 * Of ways found, in whatever order, those worth working out in full where the list is ordered by worth: the
 * best of each kind, then those that promise most when it goes and when it does not.
 */
export function worthyToRefine(
  question: WaysQuestion,
  found: readonly FoundWay[],
  rule: PickRule,
): readonly FoundWay[] {
  const looked = waysToRefine(found, { ...rule, most: LOOKED_AT * rule.most });
  const promise = promiser(question);
  const ordered = looked
    .map((way, at) => ({ way, at, promise: promise(way) }))
    .sort((a, b) => b.promise - a.promise || a.at - b.at)
    .map(({ way }) => way);
  const kinds = new Map<string, number>();
  const taken = new Set(
    ordered.filter(({ goal }) => {
      const times = (kinds.get(goal.kind) ?? 0) + 1;
      kinds.set(goal.kind, times);
      return times <= LEAST_OF_A_KIND;
    }),
  );
  for (const way of ordered) if (taken.size < rule.most) taken.add(way);
  return ordered.filter((way) => taken.has(way)).slice(0, rule.most);
}

/** So many deviations of the cue's direction off a stroke is a miss. */
const MISSED_SDS = 2.5;

/** About what a way is worth, by three strokes: as meant, and a miss to either side. */
function promiser(question: WaysQuestion): (way: FoundWay) => number {
  const { laid } = askedFor(question);
  const { profile, kit } = question;
  const judge = new StrokeJudge(question);
  return (way) => {
    const meant = atUsualPace(overTable(way), profile);
    const [goes, left, right] = [0, -MISSED_SDS, MISSED_SDS].map((sds) => {
      const stroke = { ...meant, aimRad: meant.aimRad + sds * profile.directionRad };
      return judge.judge(playLaid(laid, stroke, kit, { endsOnly: true })).value;
    });
    return way.rough * (goes ?? 0) + ((1 - way.rough) * ((left ?? 0) + (right ?? 0))) / 2;
  };
}

/** A way to pot a ball, or a safety. */
export type Play = WorthyWay | ToldSafety;

/**
 * Ways and safeties in the order asked for, no more than wanted, a pot among them wherever there is one. By how
 * often they go, safeties come last: nothing goes.
 */
export function playsToTell(
  refined: readonly WorthyWay[],
  safeties: readonly ToldSafety[],
  rule: PickRule,
  order: WaysOrder,
): readonly Play[] {
  const safe = [...safeties].sort(byWorth);
  const ways = waysToTell(refined, { ...rule, most: Math.max(1, rule.most - safe.length) });
  const plays = [...ways, ...safe.slice(0, rule.most - ways.length)];
  return order === 'worth' ? plays.sort(byWorth) : plays;
}

/** By what it is worth; of equals what leaves less, then what goes more often, then as they come. */
function byWorth({ worth: one }: Play, { worth: other }: Play): number {
  const leaves = ({ miss }: Worth) => miss?.theirBest ?? 0;
  return other.worth - one.worth || leaves(one) - leaves(other) || other.goes - one.goes;
}
