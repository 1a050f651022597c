import fc from 'fast-check';
import { expect, it } from 'vitest';
import { READING_NAMES } from '../../../src/engine/fit/trials/trial';
import { TRIAL_NAMES } from '../../../src/engine/fit/trials/trials';
import { answerFit } from '../../../src/headless/fit-answer';
import { REFUSAL_REASONS } from '../../harness/refusal-reasons';

const LINES = 160;
const TIMEOUT_MS = 300_000;

/** What may be null in an answer: a name of the asker's, and what would leave nothing to read. */
const MAY_BE_NULL = ['id', 'expected', 'residual', 'next'];

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A figure near what a field takes, at times past its ends, and at times no figure at all. */
const figure = (min: number, max: number) =>
  fc.oneof(
    { weight: 60, arbitrary: number(min, max) },
    { weight: 8, arbitrary: fc.constantFrom(min, max, 0, -0) },
    { weight: 1, arbitrary: fc.constantFrom(1e308, -1e308, 5e-324, '1', null, [], true) },
  );

const some = <T extends object>(fields: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(fields, { requiredKeys: [] });

const name = fc.constantFrom('a', 'b', '__proto__', 'constructor');

const aReading = fc.constantFrom(...TRIAL_NAMES).chain((trial) =>
  fc.record(
    {
      id: fc.jsonValue({ maxDepth: 1 }),
      trial: fc.constant(trial),
      side: figure(-0.35, 0.35),
      height: figure(-0.35, 0.35),
      elevationDeg: figure(0, 45),
      headingDeg: figure(-360, 360),
      speed: fc.constantFrom('soft', 'medium', 'firm'),
      distanceM: figure(0.05, 4),
      gapM: figure(0.005, 4),
      cutDeg: figure(-60, 60),
      kit: some({ cue: name, cloth: name, balls: name, table: name }),
      read: fc.constantFrom(...READING_NAMES).chain((odd) => readOf(trial, odd)),
    },
    { requiredKeys: ['trial', 'read', 'side', 'height', 'elevationDeg', 'gapM', 'cutDeg'] },
  ),
);

const READ: Readonly<Record<string, object>> = {
  line: { landingM: figure(-1.5, 1.5) },
  curve: { landingM: figure(-1.5, 1.5), timeS: figure(0.05, 60) },
  stop: { cueBallM: figure(-3, 3), objectBallM: figure(0, 4) },
  throw: { objectLandingM: figure(-1.5, 1.5) },
  coast: { timeS: figure(0.05, 60) },
  pivot: { bridgeM: figure(0.02, 1.5) },
  speed: { runM: figure(0.05, 40) },
};

/** Mostly what the trial reads. */
function readOf(trial: string, odd: string) {
  return fc.oneof(
    { weight: 20, arbitrary: some(READ[trial] ?? {}) },
    { weight: 1, arbitrary: fc.constant({ [odd]: 1 }) },
  );
}

const aJob = fc.record(
  {
    id: fc.jsonValue({ maxDepth: 2 }),
    readings: fc.array(aReading, { maxLength: 4 }),
    tableLengthM: figure(1, 4),
    prior: some({
      kit: some({
        massRatio: figure(2, 1e6),
        slideFriction: figure(0.02, 1),
        rollFriction: figure(0.001, 0.1),
        spinDecayRadS2: figure(0, 100),
        ballRestitution: figure(0.5, 1),
        bedRestitution: figure(0, 0.95),
        cueBallMassRatio: figure(0.7, 1.5),
        bedSlope: some({ alongM_per_M: figure(-0.01, 0.01) }),
      }),
      kitSd: some({
        massRatio: figure(0, 4),
        slideFriction: figure(0, 0.3),
        ballFriction: figure(0, 2),
        bedSlope: some({ rightM_per_M: figure(0, 2) }),
      }),
    }),
    stroke: some({
      directionDeg: figure(1e-6, 10),
      tipM: figure(0, 0.01),
      elevationDeg: figure(0, 10),
      speedShare: figure(0, 0.5),
    }),
    for: some({ cue: name }),
    next: fc.constantFrom(false, false, false, true),
  },
  { requiredKeys: ['readings', 'tableLengthM'] },
);

const aLine = fc.oneof(
  { weight: 30, arbitrary: aJob.map((job) => JSON.stringify(job)) },
  { weight: 1, arbitrary: fc.json() },
  { weight: 1, arbitrary: fc.string() },
  {
    weight: 2,
    arbitrary: fc
      .tuple(aJob, number(0, 1))
      .map(([job, share]) => JSON.stringify(job).slice(0, share * 400)),
  },
);

/** Numbers that are not finite come out of JSON as null, so nulls are counted where none belong. */
function strayNulls(value: unknown, name: string): string[] {
  if (value === null) return MAY_BE_NULL.includes(name) ? [] : [name];
  if (name === 'id' || name === 'doubtful' || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, part]) => strayNulls(part, key));
}

it(
  `ends every one of ${LINES} hostile lines in an answer or a typed refusal`,
  () => {
    const seen: Record<string, number> = {};
    fc.assert(
      fc.property(aLine, (line) => {
        const answer = JSON.parse(answerFit(line, 1));
        const { ok, reason } = answer;
        seen[reason ?? 'answered'] = (seen[reason ?? 'answered'] ?? 0) + 1;
        expect(strayNulls(answer, 'answer')).toEqual([]);
        expect(ok === true || REFUSAL_REASONS.includes(reason)).toBe(true);
      }),
      { numRuns: LINES, seed: 20_261 },
    );
    expect(seen.answered).toBeGreaterThan(LINES / 10);
    expect(seen['out-of-range']).toBeGreaterThan(LINES / 10);
    expect(seen.malformed).toBeGreaterThan(1);
  },
  TIMEOUT_MS,
);
