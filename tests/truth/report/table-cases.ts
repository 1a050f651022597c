import { isOnBed } from '../../../src/engine/table/check-table';
import type { PlacedBall } from '../../../src/engine/table/table-play';
import { ordinaryCushion, randomTableQuery, type TableQuery } from '../../harness/random-tables';
import { between, type Random, seededRandom } from '../../harness/seeded-random';

const RAD = Math.PI / 180;

/** Strokes on a whole table, drawn in the same way. */
export interface TableFamily {
  readonly name: string;
  /** How many touches are compared at most: errors grow at each. */
  readonly touches: number;
  /** How many strokes every run of the tests plays, and a soak. */
  readonly sample: number;
  readonly whole: number;
  readonly queryOf: (random: Random) => TableQuery;
}

/** Of a bed that is not level, up to, along and across. */
const TILT = 0.002;

/** What engine and reference both play on whole tables. */
export const TABLE_FAMILIES = {
  level: {
    name: 'one ball or two, to 4 m/s, level bed',
    touches: 3,
    sample: 24,
    whole: 500,
    queryOf: mixed(0),
  },
  tilted: {
    name: 'one ball or two, to 4 m/s, tilted bed',
    touches: 3,
    sample: 24,
    whole: 500,
    queryOf: mixed(TILT),
  },
  rails: {
    name: 'a lone ball with side, to 6 m/s',
    touches: 6,
    sample: 48,
    whole: 500,
    queryOf: offRails,
  },
  chains: {
    name: 'three balls in a chain, to 4 m/s',
    touches: 4,
    sample: 32,
    whole: 500,
    queryOf: chain,
  },
} as const satisfies Record<string, TableFamily>;

export type TableFamilyName = keyof typeof TABLE_FAMILIES;

/** The same stroke of a family for the same number, for ever. */
export function tableQuery(family: TableFamily, number: number): TableQuery {
  return family.queryOf(seededRandom(1 + number));
}

/** One ball or two, mostly aimed at the other, to 4 m/s and 7.5°: what stays on the table. */
function mixed(slopeM_per_M: number): TableFamily['queryOf'] {
  return (random) => {
    const query = randomTableQuery(random, slopeM_per_M, 2);
    const [cueBall, other] = query.balls;
    const { stroke } = query;
    const aimRad =
      cueBall === undefined || other === undefined || random() < 0.3
        ? stroke.aimRad
        : wayTo(cueBall, other) + between(random, -0.04, 0.04);
    const speedMps = Math.min(4, stroke.speedMps);
    const elevationRad = stroke.elevationRad / 4;
    return { ...query, stroke: { ...stroke, aimRad, speedMps, elevationRad } };
  };
}

/** A lone ball with side, any way, off cushions such as there are. */
function offRails(random: Random): TableQuery {
  const { kit, balls, shape } = randomTableQuery(random, 0, 1);
  const cushion = ordinaryCushion(random);
  const stroke = {
    aimRad: between(random, -Math.PI, Math.PI),
    side: between(random, 0.1, 0.45) * (random() < 0.5 ? -1 : 1),
    height: between(random, -0.2, 0.2),
    elevationRad: between(random, 0, 5) * RAD,
    speedMps: between(random, 1, 6),
  };
  // Not frozen to a cushion of another height.
  const clear = balls.map(({ xM, yM }) => ({ xM: 0.9 * xM, yM: 0.9 * yM }));
  return { balls: clear, shape, stroke, kit: { ...kit, cushion } };
}

/** A ball played at a second so that this one meets a third, more or less, to 4 m/s and 5°. */
function chain(random: Random): TableQuery {
  for (;;) {
    const { kit, shape, stroke, balls } = randomTableQuery(random, 0, 1);
    const [cueBall] = balls;
    if (cueBall === undefined) continue;
    const widthM = 2 * kit.ballRadiusM;
    const straight = between(random, -Math.PI, Math.PI);
    const first = beyond(cueBall, straight, widthM + between(random, 0.1, 0.8));
    const cut = straight + between(random, -50, 50) * RAD;
    // Every fourth pair touches.
    const apartM = random() < 0.25 ? 0 : between(random, 0.01, 0.5);
    const second = beyond(first, cut, widthM + apartM);
    const far = Math.hypot(second.xM - cueBall.xM, second.yM - cueBall.yM);
    if (far < 2 * widthM || ![first, second].every((ball) => isOnBed(ball, kit, shape))) continue;
    const ghost = beyond(first, cut + between(random, -3, 3) * RAD, -widthM);
    return {
      kit,
      shape,
      balls: [cueBall, first, second],
      stroke: {
        ...stroke,
        aimRad: wayTo(cueBall, ghost),
        speedMps: between(random, 1, 4),
        elevationRad: between(random, 0, 5) * RAD,
      },
    };
  }
}

function wayTo(from: PlacedBall, to: PlacedBall): number {
  return Math.atan2(to.xM - from.xM, to.yM - from.yM);
}

function beyond({ xM, yM }: PlacedBall, wayRad: number, byM: number): PlacedBall {
  return { xM: xM + byM * Math.sin(wayRad), yM: yM + byM * Math.cos(wayRad) };
}
