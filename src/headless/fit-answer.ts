import { type FitJob, type FitReport, fitReport } from '../engine/fit/fit-report';
import { READING_NAMES } from '../engine/fit/trials/trial';
import { PARTS } from '../engine/kit/kit-numbers';
import { answerFields } from './answer-fields';
import { type DoorRefusal, isRefusal } from './door-refusal';
import { FIGURE_NAMES } from './fit-figures';
import { parseFitJob } from './fit-job';
import { toldReport } from './fit-told';
import type { Fields } from './json-fields';
import { kitNames, SHOT_NAMES, STROKE_NAMES } from './parse-request';
import type { KnownNames } from './unknown-names';

/** Every name of a request to fit, and of the objects in it. */
const KNOWN: KnownNames = {
  '': ['id', 'readings', 'tableLengthM', 'prior', 'stroke', 'for', 'aims', 'next'],
  'readings[]': ['id', 'trial', ...FIGURE_NAMES, 'speed', 'read', 'kit'],
  'readings[].read': READING_NAMES,
  'readings[].kit': PARTS,
  prior: ['kit', 'kitSd'],
  ...kitNames('prior.'),
  stroke: STROKE_NAMES,
  for: PARTS,
  'aims[]': ['id', ...SHOT_NAMES],
  'aims[].target': ['distanceM', 'mouthM', 'halfAngleDeg'],
};

/**
 * Answers one line of readings with one line of what they tell, both JSON: metres, seconds and
 * degrees, right +. Lines are counted from 1.
 */
export function answerFit(line: string, lineNumber: number): string {
  return answerFields(line, lineNumber, KNOWN, answerOf);
}

function answerOf(fields: Fields): object {
  const asked = parseFitJob(fields);
  if (isRefusal(asked)) return asked;
  const report = reportOf(asked.job);
  return isRefusal(report) ? report : toldReport(report, asked);
}

/** The engine throws where the kit strays to what it does not take, a bed on which nothing stops. */
function reportOf(job: FitJob): FitReport | DoorRefusal {
  try {
    return fitReport(job);
  } catch (thrown) {
    if (!(thrown instanceof RangeError)) throw thrown;
    return {
      ok: false,
      reason: 'no-convergence',
      message: 'The search for a kit strayed to one that cannot be played with.',
      remedy: 'Give a prior with less slope of the bed, or smaller kitSd.',
      field: 'prior.kitSd',
    };
  }
}
