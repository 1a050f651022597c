import type { ComponentChildren } from 'preact';
import type { Point } from '../diagram/canvas';
import { endWords, type TableMap } from '../diagram/table-map';
import { layOutRails } from '../diagram/table-rails';
import type { TableShape } from '../engine/table/table-shape';
import { TableRails } from './TableRails';
import './PlainTable.css';

/** Of a radius: the cue ball’s dot, as on Choose. */
const DOT = 0.3;

interface TwoBallsProps {
  readonly cueBall: Point;
  readonly ball: Point;
  readonly radiusPx: number;
  /** From one to the other and on, as SVG writes it. */
  readonly way: string;
}

/** A cue ball, the ball that it is to hit, and the way to the pocket. */
export function TwoBalls({ cueBall, ball, radiusPx, way }: TwoBallsProps) {
  return (
    <>
      <path class="plain-line" d={way} />
      <circle class="plain-ball" cx={ball.x} cy={ball.y} r={radiusPx} />
      <circle class="plain-cue-ball" cx={cueBall.x} cy={cueBall.y} r={radiusPx} />
      <circle class="plain-dot" cx={cueBall.x} cy={cueBall.y} r={radiusPx * DOT} />
    </>
  );
}

interface Props {
  readonly shape: TableShape;
  readonly map: TableMap;
  /** The height of the words that say which end is which; left out: nothing is said. */
  readonly endTextPx?: number;
  readonly children: ComponentChildren;
}

/** An empty table from above, with what lies on it, within an svg. */
export function PlainTable({ shape, map, endTextPx, children }: Props) {
  const { bedPath, diamonds, pockets } = layOutRails(shape, map);
  const [left, right] = endTextPx === undefined ? ['', ''] : endWords(map, endTextPx);
  return (
    <>
      <TableRails frame={map.frame} diamonds={diamonds} />
      <path class="plain-bed" d={bedPath} />
      {pockets.map(({ name, hole }) => (
        <circle key={name} class="plain-pocket" {...hole} />
      ))}
      {children}
      {endTextPx !== undefined && (
        <>
          <text class="plain-note" x={map.endLabel.x} y={map.endLabel.y}>
            {left}
          </text>
          <text class="plain-note" x={map.scaleLabel.x} y={map.scaleLabel.y} text-anchor="end">
            {right}
          </text>
        </>
      )}
    </>
  );
}
