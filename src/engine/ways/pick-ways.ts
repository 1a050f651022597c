import { worthOf } from '../plan/worth-of';
import { type FoundWay, promiseOf } from './found-way';
import type { ToldWay } from './refine-found';
import { keyOf } from './sample';
import { wayId } from './way-id';

/** What the picking goes by. */
export interface PickRule {
  /** How many are wanted. */
  readonly most: number;
  /** Whether a way is kept for what it does, be its chance low; else only the best of each kind is. */
  readonly keepsLow: boolean;
}

/** Of one thing that happens, so many strokes that differ are told. */
const MOST_ALIKE = 3;

/** Of ways found, in whatever order, those worth working out in full; the most promising first. */
export function waysToRefine(found: readonly FoundWay[], rule: PickRule): readonly FoundWay[] {
  const best = new Map<string, FoundWay>();
  for (const way of [...found].sort(byPromise)) {
    const key = `${thingOf(way)} ${strokeOf(way)}`;
    if (!best.has(key)) best.set(key, way);
  }
  return chosen([...best.values()], rule);
}

/** The ways to tell, the likeliest to go without a scratch first. */
export function waysToTell<W extends ToldWay>(refined: readonly W[], rule: PickRule): readonly W[] {
  const ordered = [...refined].sort(byWorth);
  return [...chosen(ordered, rule)].sort(byWorth);
}

/** From a list in order: the best of each kind, then as the rule has it, until there are enough. */
function chosen<W extends Named>(
  ordered: readonly W[],
  { most, keepsLow }: PickRule,
): readonly W[] {
  const rounds: readonly ((way: W) => string)[] = keepsLow
    ? [
        ({ goal }) => goal.kind,
        (way) => `${way.goal.kind} ${way.goal.pocket}`,
        (way) => `${way.goal.kind} ${way.goal.ball} ${way.goal.pocket}`,
        thingOf,
      ]
    : [({ goal }) => goal.kind, (way) => `${way.goal.kind} ${way.goal.ball}`];
  const taken = new Set<W>();
  for (const nameOf of rounds) {
    const seen = new Set([...taken].map(nameOf));
    for (const way of ordered) {
      if (taken.size >= most) break;
      if (seen.has(nameOf(way))) continue;
      seen.add(nameOf(way));
      taken.add(way);
    }
  }
  for (const way of ordered) {
    if (taken.size >= most) break;
    const alike = [...taken].filter((other) => thingOf(other) === thingOf(way));
    if (alike.length < MOST_ALIKE) taken.add(way);
  }
  return ordered.filter((way) => taken.has(way));
}

type Named = Pick<FoundWay, 'goal'>;

/** What happens, whatever the stroke. */
function thingOf({ goal }: Named): string {
  return `${goal.kind} ${goal.pocket} ${keyOf(goal.via, goal.ball)}`;
}

/** How players would call the stroke. */
function strokeOf({ way }: Pick<FoundWay, 'way'>): string {
  return `${way.side} ${way.arrival} ${way.isDrag} ${way.speed}`;
}

function byPromise(one: FoundWay, other: FoundWay): number {
  return (
    promiseOf(other) - promiseOf(one) || compare(wayId(one, one.stroke), wayId(other, other.stroke))
  );
}

function byWorth(one: ToldWay, other: ToldWay): number {
  return (
    worthOf(other) - worthOf(one) ||
    compare(wayId(one, one.option.stroke), wayId(other, other.option.stroke))
  );
}

/** An order that hangs on nothing but the ways themselves. */
function compare(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
