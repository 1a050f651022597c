import { performance } from 'node:perf_hooks';
import { playAim } from '../../src/engine/direct/play-aim';
import type { AimAnswer, AimResult, Refusal, RefusalReason } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { refusalWords } from '../../src/words/refusal-words';
import { type HostileQuery, hostileQuery } from './hostile-queries';
import { seededRandom } from './seeded-random';

const REASONS: Readonly<Record<RefusalReason, true>> = {
  'out-of-range': true,
  'beyond-miscue-limit': true,
  'never-stops': true,
  'stops-short': true,
  'curves-away': true,
  'too-thin': true,
  'flies-over': true,
  misses: true,
  'object-ball-cannot-reach': true,
  'no-convergence': true,
};

/** The numbers that an answer may leave open, by the way to them. */
const MAY_BE_NULL = [
  'pivotBridgeM',
  'objectBall.directionRad',
  'cueBall.directionRad',
  'cueBall.rollingDirectionRad',
];

/** The parts sum to the aim within this, rad: a few roundings. */
const SUM_TOLERANCE = 1e-14;

/** What is wrong with a result as such, in words; nothing for a sound answer or refusal. */
export function complaintsOf(result: AimResult): string[] {
  return result.ok ? answerComplaints(result) : refusalComplaints(result);
}

function answerComplaints(answer: AimAnswer): string[] {
  const { squirtRad, swerveRad, throwRad } = answer.parts;
  const sum = squirtRad + swerveRad + throwRad;
  return [
    ...looseEnds('', answer),
    ...(Math.abs(sum - answer.aimRad) <= SUM_TOLERANCE ? [] : [`parts sum to ${sum}`]),
    ...(Math.abs(answer.aimRad) <= Math.PI / 2 ? [] : [`aims backwards: ${answer.aimRad}`]),
  ];
}

/** Every number that is not finite and every null that the contract does not name. */
function looseEnds(way: string, value: unknown): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${way} is ${value}`];
  if (value === null) return MAY_BE_NULL.includes(way) ? [] : [`${way} is null`];
  if (value === undefined) return [`${way} is left open`];
  if (typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, part]) =>
    looseEnds(way === '' ? key : `${way}.${key}`, part),
  );
}

function refusalComplaints(refusal: Refusal): string[] {
  const { reason } = refusal;
  const { message, remedy } = refusalWords(refusal);
  return [
    ...(Object.hasOwn(REASONS, reason) ? [] : [`unknown reason ${reason}`]),
    ...[message, remedy].filter((words) => !/^\S.*\.$/.test(words) || /NaN|undefined/.test(words)),
  ];
}

/** A question whose answer is unsound, or that threw. */
interface Finding {
  readonly asked: HostileQuery;
  readonly complaints: readonly string[];
}

/** What a run of hostile questions brought to light. */
export interface Audit {
  readonly findings: readonly Finding[];
  /** How often the search answered, and how often it refused for each reason. */
  readonly outcomes: Readonly<Record<string, number>>;
  /** The longest that one question took, ms, and which it was. */
  readonly slowestMs: number;
  readonly slowest: HostileQuery | null;
}

/** Puts so many hostile questions to both doors of the engine. */
export function auditAnswers(seed: number, count: number): Audit {
  const random = seededRandom(seed);
  const findings: Finding[] = [];
  const outcomes: Record<string, number> = {};
  let [slowestMs, slowest] = [0, null as HostileQuery | null];
  for (let asking = 0; asking < count; asking++) {
    const asked = hostileQuery(random);
    const beforeMs = performance.now();
    const { complaints, outcome } = put(asked);
    const tookMs = performance.now() - beforeMs;
    if (tookMs > slowestMs) [slowestMs, slowest] = [tookMs, asked];
    if (complaints.length > 0) findings.push({ asked, complaints });
    outcomes[outcome] = (outcomes[outcome] ?? 0) + 1;
  }
  return { findings, outcomes, slowestMs, slowest };
}

function put({ shot, kit, aimRad }: HostileQuery) {
  try {
    const solved = solveAim(shot, kit);
    const played = playAim(shot, kit, aimRad);
    const complaints = [...complaintsOf(solved), ...complaintsOf(played)];
    return { complaints, outcome: solved.ok ? 'answered' : solved.reason };
  } catch (thrown) {
    return { complaints: [`threw ${String(thrown)}`], outcome: 'threw' };
  }
}
