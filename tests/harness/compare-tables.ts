import { DEFAULT_CUSHION } from '../../src/engine/kit/kit';
import { playTable } from '../../src/engine/table/play-table';
import { WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import type { TableEvent } from '../../src/engine/table/table-play';
import type { Body } from '../truth/reference/body';
import { tableOutline } from '../truth/reference/table-outline';
import { followTable, type Happening } from '../truth/reference/table-path';
import { tipStrike } from '../truth/reference/tip-strike';
import { randomTableQuery, type TableQuery } from './random-tables';
import { between, type Random } from './seeded-random';

/** How many touches are compared: errors grow at each, and as fast as balls are far apart. */
const TOUCHES = 3;

/** Engine and reference at one and the same touch. */
interface TouchApart {
  readonly placeMm: number;
  readonly timeMs: number;
}

/** Touches in order; where the two tell of different ones, what they say. */
interface TablesCompared {
  readonly touches: readonly TouchApart[];
  readonly engine: string;
  readonly reference: string;
}

/** One ball or two, mostly aimed at the other, to 4 m/s and 7.5°: what stays on the table. */
export function comparableQuery(random: Random, slopeM_per_M: number): TableQuery {
  const query = randomTableQuery(random, slopeM_per_M, 2);
  const [cueBall, other] = query.balls;
  const { stroke } = query;
  const aimRad =
    cueBall === undefined || other === undefined || random() < 0.3
      ? stroke.aimRad
      : Math.atan2(other.xM - cueBall.xM, other.yM - cueBall.yM) + between(random, -0.04, 0.04);
  const speedMps = Math.min(4, stroke.speedMps);
  const elevationRad = stroke.elevationRad / 4;
  return { ...query, stroke: { ...stroke, aimRad, speedMps, elevationRad } };
}

/** Plays a stroke by the engine and by the reference. */
export function compareTables({ balls, stroke, kit, shape }: TableQuery): TablesCompared {
  const played = playTable(balls, stroke, kit, shape);
  if (!played.ok) throw new RangeError(played.reason);
  const told = untilHole(played.events.flatMap(touchOf)).slice(0, TOUCHES);
  const { lengthM, widthM } = shape;
  const outline = tableOutline({ ...WPA_POCKETS, lengthM, widthM });
  const still = balls.map(({ xM, yM }): Body => {
    return { at: [xM, yM, 0], velocity: [0, 0, 0], spin: [0, 0, 0] };
  });
  const cue = tipStrike(stroke, stroke.aimRad, kit);
  const bodies = still.map((body, ball) => (ball === 0 ? { ...cue, at: body.at } : body));
  const expected = followTable(bodies, { outline, kit, cushion: DEFAULT_CUSHION }, TOUCHES);
  const same = told.filter(({ name }, at) => name === nameOf(expected[at]));
  return {
    touches: same.flatMap((touch, at) => apart(touch, expected[at])),
    engine: told.map(({ name }) => name).join(', '),
    reference: expected.map(nameOf).join(', '),
  };
}

interface Touch {
  readonly name: string;
  readonly event: TableEvent;
}

const NAMES: Partial<Record<TableEvent['kind'], Happening['kind']>> = {
  'hits-ball': 'ball',
  'hits-cushion': 'cushion',
  pocketed: 'hole',
};

function touchOf(event: TableEvent): Touch[] {
  const kind = NAMES[event.kind];
  return kind === undefined ? [] : [{ name: `${kind} ${event.ball}`, event }];
}

/** The reference stops at the first hole. */
function untilHole(touches: readonly Touch[]): readonly Touch[] {
  const hole = touches.findIndex(({ name }) => name.startsWith('hole'));
  return hole < 0 ? touches : touches.slice(0, hole + 1);
}

function nameOf(happening: Happening | undefined): string {
  return happening === undefined ? 'nothing' : `${happening.kind} ${happening.ball}`;
}

function apart({ event }: Touch, happening: Happening | undefined): TouchApart[] {
  const place = happening?.places[event.ball];
  if (happening === undefined || place === undefined) return [];
  const [x, y] = place;
  return [
    {
      placeMm: 1000 * Math.hypot(event.xM - x, event.yM - y),
      timeMs: 1000 * Math.abs(event.timeS - happening.timeS),
    },
  ];
}
