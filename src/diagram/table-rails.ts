import type { CushionShape } from '../engine/table/cushion-shape';
import type { PocketName } from '../engine/table/pocket-shape';
import type { TableShape } from '../engine/table/table-shape';
import type { Circle, Point } from './canvas';
import { railDiamonds } from './table-diamonds';
import type { TableMap } from './table-map';

/** A pocket as drawn: its hole, and the middle of its mouth. */
export interface DrawnPocket {
  readonly name: PocketName;
  readonly hole: Circle;
  readonly mouth: Point;
}

/** What stands still on a table. Lengths in px; paths as SVG writes them. */
export interface RailsView {
  /** The bed with the throats of the pockets. */
  readonly bedPath: string;
  /** One for each cushion: jaw, nose, jaw. */
  readonly noses: readonly string[];
  readonly diamonds: readonly Point[];
  readonly pockets: readonly DrawnPocket[];
}

/** Cushions are drawn along their cores: the rounding of their points is under a pixel. */
export function layOutRails(shape: TableShape, map: TableMap): RailsView {
  const edges = shape.cushions.map((cushion) => edgeOf(cushion).map(map.toPoint));
  const railM = map.railPx / map.pxPerM;
  return {
    bedPath: `${pathThrough(edges.flat())}Z`,
    noses: edges.map(pathThrough),
    diamonds: railDiamonds(shape.lengthM, shape.widthM, railM / 2).map(map.toPoint),
    pockets: shape.pockets.map(({ name, drop, dropRadiusM, mouth }) => {
      const { x, y } = map.toPoint({ xM: drop.x, yM: drop.y });
      return {
        name,
        hole: { cx: x, cy: y, r: dropRadiusM * map.pxPerM },
        mouth: map.toPoint({ xM: mouth.x, yM: mouth.y }),
      };
    }),
  };
}

function edgeOf({ core }: CushionShape) {
  const starts = core.map(({ fromX, fromY }) => ({ xM: fromX, yM: fromY }));
  const ends = core.slice(-1).map(({ fromX, fromY, alongX, alongY, lengthM }) => ({
    xM: fromX + lengthM * alongX,
    yM: fromY + lengthM * alongY,
  }));
  return [...starts, ...ends];
}

/** Straight from point to point, to a tenth of a pixel. */
export function pathThrough(points: readonly Point[]): string {
  const at = ({ x, y }: Point) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  return points.length === 0 ? '' : `M${points.map(at).join('L')}`;
}
