import type { ReadingReport, ShotReport } from '../../engine/fit/shot-report';
import type { Attempt } from '../../store/attempt';

/** Whether an attempt counts, and how far it is to be trusted. */
export type Doubt = 'struck-out' | 'other-kit' | 'doubtful' | 'far' | 'none';

/** Those after which the player may want to play it again, or to change what counts. */
export const SECOND_LOOK: readonly Doubt[] = ['struck-out', 'doubtful', 'far'];

const VERDICTS: Readonly<Record<Doubt, string>> = {
  'struck-out': 'Struck out: it does not count.',
  'other-kit': 'It is not of the kit in play, and does not count for it.',
  doubtful: '◌ Doubtful: it looks like a slip, and hardly counts.',
  far: '⚠ Far from what was expected: look at it again. It counts.',
  none: 'It counts.',
};

/** @param beside its readings beside what was expected before them; empty as long as that is not known */
export function doubtOf(
  report: Pick<ShotReport, 'isDoubtful'> | null,
  beside: readonly ReadingReport[],
  { isStruckOut }: Pick<Attempt, 'isStruckOut'>,
): Doubt {
  if (isStruckOut) return 'struck-out';
  if (!report) return 'other-kit';
  if (report.isDoubtful) return 'doubtful';
  return beside.some(isFar) ? 'far' : 'none';
}

export function verdictWords(doubt: Doubt): string {
  return VERDICTS[doubt];
}

/** Nineteen readings of twenty lie within so many deviations: the band that is drawn. */
const USUAL_SD = 2;

function isFar({ read, expected, sd }: ReadingReport): boolean {
  return expected !== null && Math.abs(read - expected) > USUAL_SD * sd;
}
