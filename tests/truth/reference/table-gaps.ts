import type { Kit } from '../../../src/engine/kit/kit';
import type { Body } from './body';
import { noseNormal } from './cushion-bounce';
import { toBody } from './forces';
import type { Runner } from './runner';
import { holeGap, nearestEdge, type Outline } from './table-outline';
import { dot, length, minus, type Vec3 } from './vec3';

/** A table to be played on. */
export interface Table {
  readonly outline: Outline;
  readonly kit: Kit;
}

/** A way in which two things may meet. */
export interface Gap {
  readonly kind: 'ball' | 'cushion' | 'hole';
  readonly ball: number;
  /** The ball that it meets, of a higher number; null: it meets no ball. */
  readonly other: number | null;
  readonly gapM: number;
  /** It surely stays open for so long, s. */
  readonly openS: number;
}

/** More than a ball gains in the longest step, m/s. */
const MARGIN_MPS = 0.1;
/** No ball is accelerated more, in flight or by a cloth. */
const STRONGEST_MPS2 = 10;

/** Every gap of a ball that moves. */
export function gapsOf(runners: readonly Runner[], table: Table): Gap[] {
  const bodies = runners.map(({ ball }) => toBody(ball));
  const moves = (ball: number) => runners[ball]?.stretch !== null;
  const pairs = bodies.flatMap((one, ball) =>
    bodies.flatMap((two, other): Gap[] => {
      if (other <= ball || !(moves(ball) || moves(other))) return [];
      const gapM = pairGap(one.at, two.at, table);
      const openS = pairOpenS(gapM, closingSpeed(one, two));
      return [{ kind: 'ball', ball, other, gapM, openS }];
    }),
  );
  const alone = bodies.flatMap(({ at, velocity }, ball): Gap[] => {
    if (!moves(ball)) return [];
    const gap = (kind: Gap['kind'], gapM: number): Gap => {
      return { kind, ball, other: null, gapM, openS: gapM / (length(velocity) + MARGIN_MPS) };
    };
    const holeM = holeGap(table.outline, [at[0], at[1]]);
    return [gap('cushion', cushionGap(at, table)), gap('hole', holeM)];
  });
  return [...pairs, ...alone];
}

/** Going straight, two balls never close in faster than they do now; the rest is acceleration. */
function pairOpenS(gapM: number, closingMps: number): number {
  const mostMps2 = 2 * STRONGEST_MPS2;
  const rootMps = Math.sqrt(closingMps ** 2 + 2 * mostMps2 * Math.max(0, gapM));
  return (rootMps - closingMps) / mostMps2;
}

/** Along the line of centres. */
function closingSpeed(one: Body, two: Body): number {
  const between = minus(two.at, one.at);
  return dot(minus(one.velocity, two.velocity), between) / length(between);
}

function pairGap(one: Vec3, two: Vec3, { kit }: Table): number {
  return length(minus(one, two)) - 2 * kit.ballRadiusM;
}

function cushionGap(at: Vec3, { outline, kit }: Table): number {
  const { awayM } = nearestEdge(outline, [at[0], at[1]]);
  const riseM = (kit.cushion.noseHeight - 1) * kit.ballRadiusM - at[2];
  return Math.hypot(awayM, riseM) - kit.ballRadiusM;
}

/** The same gap, at another time. */
export function gapLike(
  { kind, ball, other }: Gap,
  runners: readonly Runner[],
  table: Table,
): number {
  const [one, two] = [runners[ball], runners[other ?? -1]];
  if (one === undefined) return Number.POSITIVE_INFINITY;
  const { at } = toBody(one.ball);
  if (two !== undefined) return pairGap(at, toBody(two.ball).at, table);
  return kind === 'hole' ? holeGap(table.outline, [at[0], at[1]]) : cushionGap(at, table);
}

/** How fast the two surfaces close in, m/s; 0 for a hole. */
export function closingOf(bodies: readonly Body[], gap: Gap, { outline, kit }: Table): number {
  const [one, two] = [bodies[gap.ball], bodies[gap.other ?? -1]];
  if (one === undefined || gap.kind === 'hole') return 0;
  if (two !== undefined) return closingSpeed(one, two);
  const nose = noseNormal(one, intoCushion(one, outline), kit.cushion, kit.ballRadiusM);
  return dot(one.velocity, nose);
}

/** Level, towards the nearest edge. */
export function intoCushion({ at: [x, y] }: Body, outline: Outline): Vec3 {
  return [...nearestEdge(outline, [x, y]).towards, 0];
}
