import type { WayKind } from '../goal/goal';
import type { StretchFound, WhyNoWay } from './stretch-found';
import { askedFor, type WaysQuestion } from './ways-question';

/** Why no way of a kind goes. */
export interface NoWay {
  readonly kind: WayKind;
  /** What became of most that seemed to be there; or that there was nothing to begin with. */
  readonly why: WhyNoWay | 'nothing-legal' | 'no-line';
}

/** The kinds of which no way was found, each with the reason. */
export function whyNone(question: WaysQuestion, parts: readonly StretchFound[]): readonly NoWay[] {
  const { first, falls } = askedFor(question);
  const isLegal = first.length > 0 && falls.length > 0;
  return kindsWithout(question, parts).map((kind) => ({
    kind,
    why: isLegal ? mostOf(kind, parts) : 'nothing-legal',
  }));
}

/** The kinds asked for of which no way was found. */
export function kindsWithout(
  { kinds }: WaysQuestion,
  parts: readonly StretchFound[],
): readonly WayKind[] {
  const found = new Set(parts.flatMap(({ ways }) => ways.map(({ goal }) => goal.kind)));
  return kinds.filter((kind) => !found.has(kind));
}

function mostOf(kind: WayKind, parts: readonly StretchFound[]): WhyNoWay | 'no-line' {
  const counts = new Map<WhyNoWay, number>();
  for (const { failed } of parts) {
    for (const { kind: of, why, times } of failed) {
      if (of === kind) counts.set(why, (counts.get(why) ?? 0) + times);
    }
  }
  const sorted = [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
  return sorted[0]?.[0] ?? 'no-line';
}
