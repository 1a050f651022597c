import type { RankedWay } from './ranked-way';

/** What a way gains, of whatever goes: the cue ball kept, and in the zone where there is one, 0 to 1. */
export function keptShare({
  goodPosition,
  clean,
}: Pick<RankedWay, 'goodPosition' | 'clean'>): number {
  return goodPosition ?? clean;
}

/** What ways are ordered by, of all strokes: those that go and keep the cue ball so, 0 to 1. */
export function worthOf(way: Pick<RankedWay, 'chance' | 'goodPosition' | 'clean'>): number {
  return way.chance * keptShare(way);
}
