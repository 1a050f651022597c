import { playTable } from '../../../src/engine/table/play-table';
import { WPA_POCKETS } from '../../../src/engine/table/pocket-standard';
import type { PlacedBall, TableEvent, TablePlay } from '../../../src/engine/table/table-play';
import type { TableQuery } from '../../harness/random-tables';
import type { Body } from '../reference/body';
import { tableOutline } from '../reference/table-outline';
import { type Followed, followTable, type Happening } from '../reference/table-path';
import { tipStrike } from '../reference/tip-strike';
import type { Vec3 } from '../reference/vec3';

/** Touches slower than this are played by the engine, but not told, m/s. */
const TOLD_MPS = 1e-3;

/** What came of a stroke played twice. */
export interface TablesCompared {
  /**
   * How far apart the ball is at each touch (of two, the first told), mm: up to where one meets a
   * pocket's rounded point, or engine and reference tell of different touches.
   */
  readonly touchesMm: readonly number[];
  /** The touches that each tells of, so far. */
  readonly engine: string;
  readonly reference: string;
  /** How far apart the balls come to rest, the worst of them, mm; null where not all of them do. */
  readonly restMm: number | null;
  /** Whether a ball met the rounded point of a pocket, where errors leap. */
  readonly meetsPoint: boolean;
}

/** Plays a stroke by the engine and by the reference, up to so many touches, or to rest. */
export function compareTables(query: TableQuery, most: number): TablesCompared {
  const { balls, stroke, kit, shape } = query;
  const played = playTable(balls, stroke, kit, shape);
  if (!played.ok) throw new RangeError(played.reason);
  const followed = followQuery(query, most);
  const told = untilOver(played.events.flatMap(touchOf)).slice(0, most);
  const expected = followed.happenings
    .filter(({ kind, closingMps }) => kind === 'hole' || closingMps > TOLD_MPS)
    .slice(0, told.at(-1)?.isPoint ? told.length : most);
  const same = told.filter(({ name }, at) => name === nameOf(expected[at]));
  return {
    touchesMm: same.flatMap((touch, at) => apartMm(touch, expected[at])),
    engine: told.map(({ name }) => name).join(', '),
    reference: expected.map(nameOf).join(', '),
    restMm: restsApart(played, followed),
    meetsPoint: played.events.some(isPoint),
  };
}

/** One touch more than are compared, so that a ball that rests after the last is seen to. */
function followQuery({ balls, stroke, kit, shape }: TableQuery, most: number): Followed {
  const { lengthM, widthM } = shape;
  const outline = tableOutline({ ...WPA_POCKETS, lengthM, widthM });
  const still = balls.map(({ xM, yM }): Body => {
    return { at: [xM, yM, 0], velocity: [0, 0, 0], spin: [0, 0, 0] };
  });
  const cue = tipStrike(stroke, stroke.aimRad, kit);
  const bodies = still.map((body, ball) => (ball === 0 ? { ...cue, at: body.at } : body));
  return followTable(bodies, { outline, kit }, most + 1);
}

interface Touch {
  readonly name: string;
  readonly isPoint: boolean;
  readonly event: TableEvent;
}

const NAMES: Partial<Record<TableEvent['kind'], Happening['kind']>> = {
  'hits-ball': 'ball',
  'hits-cushion': 'cushion',
  pocketed: 'hole',
};

function touchOf(event: TableEvent): Touch[] {
  const kind = NAMES[event.kind];
  if (kind === undefined) return [];
  const other = event.kind === 'hits-ball' ? ` ${event.other}` : '';
  return [{ name: `${kind} ${event.ball}${other}`, isPoint: isPoint(event), event }];
}

function isPoint(event: TableEvent): boolean {
  return event.kind === 'hits-cushion' && event.part === 'point';
}

/** The reference stops at the first hole, the comparison at the first point. */
function untilOver(touches: readonly Touch[]): readonly Touch[] {
  const last = touches.findIndex(({ name, isPoint }) => isPoint || name.startsWith('hole'));
  return last < 0 ? touches : touches.slice(0, last + 1);
}

function nameOf(happening: Happening | undefined): string {
  if (happening === undefined) return 'nothing';
  const { kind, ball, other } = happening;
  return other === null ? `${kind} ${ball}` : `${kind} ${ball} ${other}`;
}

function apartMm({ event }: Touch, happening: Happening | undefined): number[] {
  const place = happening?.places[event.ball];
  return place === undefined ? [] : [millimetres(event, place)];
}

function restsApart({ balls }: TablePlay, { rests }: Followed): number | null {
  const each = balls.map(({ outcome }, ball) => {
    const place = rests?.[ball];
    const lies = outcome.kind === 'rests' || outcome.kind === 'hangs';
    return lies && place !== undefined ? millimetres(outcome, place) : null;
  });
  const all = each.filter((mm) => mm !== null);
  return all.length < each.length ? null : Math.max(...all);
}

function millimetres({ xM, yM }: PlacedBall, [x, y]: Vec3): number {
  return 1000 * Math.hypot(xM - x, yM - y);
}
