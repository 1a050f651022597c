import type { Kit } from '../kit/kit';
import { type Approach, newApproach } from '../motion/first-touch';
import { newPlace, type Place } from '../motion/phase';
import type { CushionShape } from './cushion-shape';
import type { Mover } from './mover';
import { type NearestOnCushion, newNearest } from './nearest-on-cushion';
import type { PlanBox } from './plan-box';
import type { PocketShape } from './pocket-shape';
import type { TableEvent } from './table-play';
import type { TableShape } from './table-shape';

/** What a ball by itself comes to next. */
export interface OwnEvent {
  kind: 'phase-ends' | 'cushion' | 'over-cushion' | 'drop';
  timeS: number;
  /** Of the cushion or the pocket. */
  index: number;
}

/** All there is to know while a stroke is played out. It lives as long as that. */
export interface Field {
  readonly kit: Kit;
  /** For two balls of the same mass. */
  readonly evenKit: Kit;
  readonly movers: readonly Mover[];
  readonly cushions: readonly CushionShape[];
  readonly pockets: readonly PocketShape[];
  /** A ball whose centre stays in here meets neither cushion nor pocket. */
  readonly open: PlanBox;
  readonly own: readonly OwnEvent[];
  /** When ball i < j meet, s, at i·n + j. */
  readonly meetS: Float64Array;
  /** Of ball i the j > i that it meets first. */
  readonly nextMet: Int32Array;
  /** When they last met, likewise. */
  readonly metS: Float64Array;
  /** When ball i last met cushion c, s, at 6·i + c. */
  readonly cushionMetS: Float64Array;
  readonly events: TableEvent[];
  readonly scratch: Scratch;
}

/** Pads that the searches write to. */
interface Scratch {
  readonly approach: Approach;
  readonly nearest: NearestOnCushion;
  readonly one: Place;
  readonly other: Place;
}

export function newField(movers: readonly Mover[], kit: Kit, shape: TableShape): Field {
  const count = movers.length;
  const never = (size: number, time: number) => new Float64Array(size).fill(time);
  return {
    kit,
    evenKit: { ...kit, cueBallMassRatio: 1 },
    movers,
    cushions: shape.cushions,
    pockets: shape.pockets,
    open: openBox(shape, kit.ballRadiusM),
    own: movers.map(() => ({ kind: 'phase-ends', timeS: Number.POSITIVE_INFINITY, index: 0 })),
    meetS: never(count * count, Number.POSITIVE_INFINITY),
    nextMet: Int32Array.from(movers, ({ number }) => number + 1),
    metS: never(count * count, Number.NEGATIVE_INFINITY),
    cushionMetS: never(count * shape.cushions.length, Number.NEGATIVE_INFINITY),
    events: [],
    scratch: { approach: newApproach(), nearest: newNearest(), one: newPlace(), other: newPlace() },
  };
}

/** The holes lie beyond the noses, or so little before them that a ball's radius is farther. */
function openBox({ lengthM, widthM }: TableShape, radiusM: number): PlanBox {
  const [x, y] = [widthM / 2 - radiusM, lengthM / 2 - radiusM];
  return { minX: -x, maxX: x, minY: -y, maxY: y };
}
