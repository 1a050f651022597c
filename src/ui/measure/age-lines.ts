import type { Part } from '../../engine/kit/kit-numbers';
import type { AttemptProgress } from '../../state/measure/attempt-progress';
import { traitsOf } from '../../state/measure/trial-traits';
import type { ShelfName } from '../../store/records';
import { agoWords, daysPassed } from '../../units/ago-words';

/** When something was last measured, and whether that is long ago for what it is. */
export interface AgeLine {
  readonly text: string;
  readonly isStale: boolean;
}

interface Aging {
  readonly name: string;
  readonly shelf: ShelfName;
  readonly part: Part;
  /** Days after which it may have changed (our judgement). */
  readonly lastsDays: number;
  readonly why: string;
}

const AGING: readonly Aging[] = [
  {
    name: 'Cue',
    shelf: 'cues',
    part: 'cue',
    lastsDays: 365,
    why: 'a tip wears',
  },
  {
    name: 'Cloth',
    shelf: 'cloths',
    part: 'cloth',
    lastsDays: 60,
    why: 'a cloth changes',
  },
  {
    name: 'Balls',
    shelf: 'balls',
    part: 'balls',
    lastsDays: 60,
    why: 'balls get dirty',
  },
];

/**
 * One line for each thing that was measured.
 * @param measured the shelves that readings told anything of: a trial may touch a thing and not
 */
export function ageLines(
  attempts: readonly AttemptProgress[],
  measured: readonly ShelfName[],
  nowMs: number,
): readonly AgeLine[] {
  return AGING.flatMap(({ name, shelf, part, lastsDays, why }) => {
    if (!measured.includes(shelf)) return [];
    const times = attempts
      .filter(({ attempt, now }) => {
        return (
          now === null && !attempt.isStruckOut && traitsOf(attempt.shot.trial).tells.includes(part)
        );
      })
      .map(({ attempt }) => attempt.startedAtMs);
    if (times.length === 0) return [];
    const passedMs = nowMs - Math.max(...times);
    const isStale = daysPassed(passedMs) > lastsDays;
    const text = `${name} last measured ${agoWords(passedMs)}${isStale ? `: ${why}` : ''}.`;
    return [{ text, isStale }];
  });
}
