import type { NamedBall } from '../engine/lie/position';
import type { TablePlay } from '../engine/table/table-play';
import { type BallPath, ballPaths, fallsAtS } from './ball-paths';
import { layOutTable, type TableMap } from './table-map';
import { layOutPicture, type TablePicture } from './table-picture';

/** What a small drawing of a way is made of. */
export interface PicturedWay {
  readonly lengthM: number;
  readonly widthM: number;
  readonly balls: readonly NamedBall[];
  /** The stroke as meant; its balls are those given, the cue ball first. Null: not played yet. */
  readonly play: TablePlay | null;
  /** The place in the play's list of the ball that falls. */
  readonly falls: number;
}

/** A small drawing of a way, until its ball falls; px. */
export interface WayPictureView extends Omit<TablePicture, 'path'> {
  readonly paths: readonly BallPath[];
}

/** The table as it lies on the board: along the longer side of the room given. */
export function layOutWayPicture(
  { lengthM, widthM, balls, play, falls }: PicturedWay,
  room: { readonly widthPx: number; readonly heightPx: number },
): WayPictureView {
  const goal = { ball: null, pocket: null };
  const { frame, bed, holes, balls: dots } = layOutPicture({ lengthM, widthM, balls, goal }, room);
  const map = layOutTable({ lengthM, widthM }, { ...room, textPx: 0 });
  return { frame, bed, holes, balls: dots, paths: pathsUntilFall({ play, falls }, map) };
}

/** The ways of all balls that move, until the one meant falls; where it does not, until all rest. */
export function pathsUntilFall(
  { play, falls }: Pick<PicturedWay, 'play' | 'falls'>,
  map: Pick<TableMap, 'toPoint'>,
): readonly BallPath[] {
  return play ? ballPaths(play, map, fallsAtS(play, falls) ?? play.endS) : [];
}
