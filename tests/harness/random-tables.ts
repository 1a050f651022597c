import { type Cushion, DEFAULT_CUSHION, type Kit } from '../../src/engine/kit/kit';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { isOnBed } from '../../src/engine/table/check-table';
import { TABLE_SIZES, WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import type { PlacedBall } from '../../src/engine/table/table-play';
import { type TableShape, tableShape } from '../../src/engine/table/table-shape';
import { randomQuery } from './random-shots';
import { between, type Random } from './seeded-random';

/** A stroke into balls on a table. */
export interface TableQuery {
  readonly balls: readonly PlacedBall[];
  readonly stroke: Stroke;
  readonly kit: Kit;
  readonly shape: TableShape;
}

const SHAPES = Object.values(TABLE_SIZES).map(({ lengthM, widthM }) =>
  tableShape(lengthM, widthM, WPA_POCKETS),
);

/** A table of any size with from 1 to 16 balls, every fifth stroke hard, some balls frozen. */
export function randomTableQuery(random: Random, slopeM_per_M = 0, mostBalls = 16): TableQuery {
  const shape = SHAPES[Math.floor(SHAPES.length * random())];
  if (shape === undefined) throw new RangeError('there is no such table');
  const { shot, kit } = randomQuery(random, slopeM_per_M);
  const { side, height, elevationRad } = shot;
  const speedMps = random() < 0.2 ? between(random, 5, 12) : shot.speedMps;
  const aimRad = between(random, -Math.PI, Math.PI);
  const count = 1 + Math.floor(mostBalls * random());
  const balls = randomLayout(random, count, shape, kit);
  return { balls, shape, kit, stroke: { aimRad, side, height, elevationRad, speedMps } };
}

/** A cushion such as there are, invented. */
export function ordinaryCushion(random: Random): Cushion {
  return {
    restitution: between(random, 0.9, 1),
    lossPerMps: between(random, 0, 0.15),
    lossFromMps: between(random, 0.5, 3),
    friction: between(random, 0.1, 0.2),
    noseHeight: between(random, 1.2, 1.4),
  };
}

const MOST_TRIES = 3000;

/** Balls anywhere on the bed, in a third of the layouts in touching clusters; some on a rail. */
function randomLayout(random: Random, count: number, shape: TableShape, kit: Kit): PlacedBall[] {
  const isTight = random() < 0.3;
  const balls: PlacedBall[] = [];
  for (let tries = 0; tries < MOST_TRIES && balls.length < count; tries++) {
    const other = balls[Math.floor(balls.length * random())];
    const ball =
      isTight && other !== undefined && balls.length > 1
        ? touching(other, between(random, 0, 2 * Math.PI), kit)
        : anywhere(random, shape, kit);
    if (isFree(ball, balls, kit) && isOnBed(ball, kit, shape)) balls.push(ball);
  }
  return balls;
}

function touching({ xM, yM }: PlacedBall, wayRad: number, kit: Kit): PlacedBall {
  const widthM = 2 * kit.ballRadiusM;
  return { xM: xM + widthM * Math.sin(wayRad), yM: yM + widthM * Math.cos(wayRad) };
}

function anywhere(random: Random, { lengthM, widthM }: TableShape, kit: Kit): PlacedBall {
  const [x, y] = [widthM / 2 + 0.03, lengthM / 2 + 0.03];
  const ball = { xM: between(random, -x, x), yM: between(random, -y, y) };
  if (random() > 0.1) return ball;
  // A ball on the bed touches the nose below its tip, so a little nearer than its radius.
  const rise = DEFAULT_CUSHION.noseHeight - 1;
  const frozenM = widthM / 2 - kit.ballRadiusM * Math.sqrt(1 - rise ** 2);
  return { ...ball, xM: Math.sign(ball.xM) * frozenM };
}

function isFree({ xM, yM }: PlacedBall, others: readonly PlacedBall[], kit: Kit): boolean {
  const leastM = 2 * kit.ballRadiusM - 1e-9;
  return others.every((other) => Math.hypot(other.xM - xM, other.yM - yM) >= leastM);
}
