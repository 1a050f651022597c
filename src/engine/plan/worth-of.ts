import type { RankedWay } from './ranked-way';

/** What ways are ordered by, of all strokes: those that go and keep the cue ball, in the zone if any. */
export function worthOf({
  chance,
  goodPosition,
  clean,
}: Pick<RankedWay, 'chance' | 'goodPosition' | 'clean'>): number {
  return chance * (goodPosition ?? clean);
}
