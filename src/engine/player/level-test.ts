import type { Shot } from '../direct/shot';
import { fallingWay } from '../goal/falling-way';
import { directCut, type Pot } from '../goal/goal';
import type { OpenWay } from '../goal/open-way';
import type { PositionShot } from '../goal/position-shot';
import { type FindWay, shotFrom } from '../goal/shot-from-position';
import type { Kit } from '../kit/kit';
import { kitAlong } from '../kit/kit-along';
import type { KitSpread } from '../kit/kit-spread';
import type { Position } from '../lie/position';
import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../table/diamonds';
import type { PocketName } from '../table/pocket-shape';
import type { TableShape } from '../table/table-shape';
import { type AskedShot, type PlainLine, plainLine, shotLine } from './shot-line';

/** A shot of the level test as it is to be laid and played: plain data. */
export interface LevelShot extends AskedShot {
  /** Cue ball and ball 1, each where lines from two diamonds cross; in the table's frame. */
  readonly position: Position;
  readonly goal: Pot;
  /** Of the straight line over the table, as in a shot from a position, rad. */
  readonly headingRad: number;
  readonly line: PlainLine;
}

/** In diamonds, from the left and from the near end. */
export interface Crossing {
  readonly across: number;
  readonly along: number;
}

/** A ball, and where the cue ball may lie for it; to the far right pocket. */
export interface Layout {
  readonly ball: Crossing;
  readonly cueBalls: readonly Crossing[];
}

export const at = (across: number, along: number): Crossing => ({ across, along });

/** Straight ones and cuts either way, near and far (invented). */
export const LAYOUTS: readonly Layout[] = [
  { ball: at(3, 7), cueBalls: [at(2, 6), at(1, 5), at(2, 5), at(3, 5), at(1, 6)] },
  { ball: at(3, 6), cueBalls: [at(2, 4), at(1, 2), at(3, 4), at(1, 4), at(2, 2)] },
  { ball: at(2, 6), cueBalls: [at(1, 5), at(2, 4), at(1, 3), at(2, 2)] },
  { ball: at(3, 5), cueBalls: [at(2, 2), at(3, 3), at(1, 2), at(2, 1)] },
  { ball: at(2, 4), cueBalls: [at(1, 2), at(2, 2), at(1, 1), at(1, 3)] },
  { ball: at(3, 4), cueBalls: [at(2, 1), at(3, 1), at(1, 1)] },
  { ball: at(2, 5), cueBalls: [at(1, 3), at(1, 2), at(1, 1)] },
  { ball: at(3, 3), cueBalls: [at(3, 1), at(2, 1), at(1, 1)] },
  { ball: at(2, 3), cueBalls: [at(1, 1), at(2, 1)] },
  { ball: at(3, 2), cueBalls: [at(3, 1), at(2, 1)] },
];

const POCKETS = ['far-right', 'far-left'] as const;
const MEDIUM_MPS = 1.8;

/** Where a level test is to be laid, and with what it is played. */
export interface LevelTable {
  readonly shape: TableShape;
  /** As seen from the break end. */
  readonly kit: Kit;
  readonly spread: KitSpread;
}

/** A cut of less than this, rad, is the rounding of a straight one. */
const STRAIGHT_RAD = 1e-6;

/** How the cue ball is struck, the cue as level as it goes. */
export type StruckAs = Pick<Shot, 'side' | 'height' | 'speedMps'>;

/** Medium, in the centre. */
export const PLAIN: StruckAs = { side: 0, height: 0, speedMps: MEDIUM_MPS };

/**
 * The shots of the level test on a table: medium, struck in the centre, the cue as level as it goes,
 * into either far corner. Those that have no aim there are left out.
 */
export function levelTest(table: LevelTable): readonly LevelShot[] {
  return layShots(table, LAYOUTS, POCKETS, [PLAIN]);
}

/** Every cue ball of every layout at each pocket, struck in each way; those without an aim are left out. */
export function layShots(
  table: LevelTable,
  layouts: readonly Layout[],
  pockets: readonly PocketName[],
  strokes: readonly StruckAs[],
): readonly LevelShot[] {
  const { shape, kit } = table;
  return layouts.flatMap(({ ball, cueBalls }) =>
    pockets.flatMap((pocket) => {
      // What is open of the pocket hangs on the ball's place alone.
      let open: OpenWay | null | undefined;
      const findWay: FindWay = (...asked) => {
        open ??= fallingWay(...asked);
        return open;
      };
      return cueBalls.flatMap((cueBall): readonly LevelShot[] => {
        const position: Position = [
          { name: 'cue', ...placeOn(shape, cueBall, pocket) },
          { name: 1, ...placeOn(shape, ball, pocket) },
        ];
        const laid = { position, goal: directCut(1, pocket) };
        const found = shotFrom(position, laid.goal, shape, kit, findWay);
        if (!found.ok || found.inTheWay.length > 0) return [];
        return strokes.flatMap((struck) => levelShot(laid, found, table, struck));
      });
    }),
  );
}

function levelShot(
  laid: Pick<LevelShot, 'position' | 'goal'>,
  { distanceM, cutRad, headingRad, target, least }: PositionShot,
  { kit, spread }: LevelTable,
  struck: StruckAs,
): readonly LevelShot[] {
  const shot = {
    distanceM,
    cutRad: Math.abs(cutRad) < STRAIGHT_RAD ? 0 : cutRad,
    side: struck.side,
    height: struck.height,
    elevationRad: least.elevationRad,
    speedMps: struck.speedMps,
  };
  const asked = { shot, target, kit: kitAlong(kit, headingRad), spread };
  const line = shotLine(asked);
  if (line === null) return [];
  return [{ ...asked, ...laid, headingRad, line: plainLine(line) }];
}

/** Where a crossing lies, mirrored for the pockets on the left, m. */
export function placeOn(
  { widthM, lengthM }: TableShape,
  { across, along }: Crossing,
  pocket: PocketName,
) {
  const right = (across / DIAMONDS_ACROSS - 1 / 2) * widthM;
  return {
    xM: pocket.endsWith('left') ? -right : right,
    yM: (along / DIAMONDS_ALONG - 1 / 2) * lengthM,
  };
}
