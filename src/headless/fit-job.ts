import type { FitJob } from '../engine/fit/fit-report';
import type { TrialShot } from '../engine/fit/trials/trials';
import { shotsToDo } from '../engine/fit/trials/trials';
import { isWithin } from '../engine/numerics/range';
import { type DoorRefusal, isRefusal, notTaken, span } from './door-refusal';
import { parseAims } from './fit-aims';
import { FIGURE_RANGES } from './fit-figures';
import { parseParts } from './fit-parts';
import { parsePrior, parseScatter } from './fit-prior';
import type { GivenReading } from './fit-reading';
import { parseReadings } from './fit-readings';
import { type Fields, orElse } from './json-fields';

/** A request to fit as the engine takes it, and what the answer needs besides. */
export interface AskedFit {
  readonly job: FitJob;
  /** What the request called its readings, in order. */
  readonly ids: readonly unknown[];
  readonly isNextAsked: boolean;
}

/** Reads a request, or tells why it cannot be taken. */
export function parseFitJob(fields: Fields): AskedFit | DoorRefusal {
  const prior = parsePrior(fields.prior);
  if (isRefusal(prior)) return prior;
  const { ballRadiusM } = prior.kit;
  const setting = { tableLengthM: fields.tableLengthM, ballRadiusM };
  const readings = parseReadings(fields.readings, setting);
  if (isRefusal(readings)) return readings;
  const parts = parseParts(orElse(fields.for, readings.at(-1)?.parts), 'for');
  if (isRefusal(parts)) return parts;
  const scatter = parseScatter(fields);
  if (isRefusal(scatter)) return scatter;
  const aims = parseAims(fields.aims, prior.kit);
  if (isRefusal(aims)) return aims;
  const candidates = parseNext(fields, readings, ballRadiusM);
  if (isRefusal(candidates)) return candidates;
  return {
    job: {
      shots: readings.map(({ shot, readings: read, parts: own }, index) => ({
        id: String(index),
        shot,
        readings: read,
        prior: { ...prior, parts: own },
        scatter,
      })),
      prior: { ...prior, parts },
      scatter,
      aims,
      candidates,
    },
    ids: readings.map(({ id }) => id),
    isNextAsked: fields.next === true,
  };
}

/** The trials to choose the next from, on the table that was last played on; none where not asked. */
function parseNext(
  { next = false, tableLengthM }: Fields,
  readings: readonly GivenReading[],
  ballRadiusM: number,
): readonly TrialShot[] | DoorRefusal {
  if (typeof next !== 'boolean') return notTaken('next', 'true or false');
  if (!next) return [];
  const lengthM = orElse(tableLengthM, readings.at(-1)?.shot.setup.bedLengthM);
  return isWithin(FIGURE_RANGES.tableLengthM, lengthM)
    ? shotsToDo({ lengthM, ballRadiusM })
    : notTaken('tableLengthM', span(FIGURE_RANGES.tableLengthM));
}
