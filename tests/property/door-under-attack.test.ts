import { expect, it } from 'vitest';
import { answerLine } from '../../src/headless/answer-line';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { hostileQuery } from '../harness/hostile-queries';
import { REFUSAL_REASONS } from '../harness/refusal-reasons';
import { type Random, seededRandom } from '../harness/seeded-random';

const LINES = campaignSize(6000, 1_000_000);
const DEGREES = 180 / Math.PI;

/** Things that are not what a field should hold. */
const WRONG: readonly unknown[] = [
  null,
  '',
  '1.5',
  'NaN',
  true,
  [],
  [1],
  {},
  { a: 1 },
  { distanceM: [] },
  -1,
  0,
  1e308,
  '\u0000',
  '__proto__',
];

const pick = <T>(random: Random, list: readonly T[]): T | undefined =>
  list[Math.floor(random() * list.length)];

/** A request in the door's own names, from a hostile query. */
function request(random: Random): Record<string, unknown> {
  const { shot, kit, aimRad } = hostileQuery(random);
  return {
    id: pick(random, [1, 'a', null, { x: [] }]),
    distanceM: shot.distanceM,
    cutDeg: shot.cutRad * DEGREES,
    side: shot.side,
    height: shot.height,
    elevationDeg: shot.elevationRad * DEGREES,
    speedMps: shot.speedMps,
    kit,
    ...(random() < 0.3 ? { aimAngleDeg: aimRad * DEGREES } : {}),
    ...(random() < 0.2 ? { target: { distanceM: 2 * random(), mouthM: 0.13 * random() } } : {}),
    ...(random() < 0.02 ? { want: ['forgives', 'certainty', 'chance'] } : {}),
  };
}

/** A line that may be a request, a spoilt one, or no JSON at all. */
function hostileLine(random: Random): string {
  const asked = request(random);
  if (random() < 0.4) {
    const field = pick(random, Object.keys(asked)) ?? 'id';
    asked[field] = pick(random, WRONG);
  }
  if (random() < 0.1) asked[`${pick(random, WRONG)}`] = pick(random, WRONG);
  const line = JSON.stringify(asked);
  return random() < 0.05 ? line.slice(0, Math.floor(random() * line.length)) : line;
}

/** Numbers that are not finite come out of JSON as null, so nulls are counted where none belong. */
function isSound(answer: Record<string, unknown>): boolean {
  if (answer.ok !== true)
    return answer.ok === false && REFUSAL_REASONS.includes(`${answer.reason}`);
  const { aimAngleDeg, aimOffsetM, parts, arrival } = answer as Record<string, object>;
  const figures = [aimAngleDeg, aimOffsetM, ...Object.values({ ...parts, ...arrival })];
  return figures.every((figure) => typeof figure === 'string' || Number.isFinite(figure));
}

it(
  `ends every one of ${LINES} hostile lines in an answer or a typed refusal`,
  () => {
    const random = seededRandom(1_000_003);
    const failures: string[] = [];
    let answered = 0;
    let slowestMs = 0;
    let slowest = '';
    for (let number = 1; number <= LINES; number++) {
      const line = hostileLine(random);
      const start = performance.now();
      const answer = JSON.parse(answerLine(line, number));
      const tookMs = performance.now() - start;
      if (tookMs > slowestMs) [slowestMs, slowest] = [tookMs, line];
      if (!isSound(answer)) failures.push(line);
      if (answer.ok) answered++;
    }
    if (LINES > 100_000) process.stdout.write(`slowest ${slowestMs.toFixed(1)} ms: ${slowest}\n`);
    expect(failures).toEqual([]);
    expect(answered).toBeGreaterThan(LINES / 20);
  },
  CAMPAIGN_TIMEOUT_MS,
);
