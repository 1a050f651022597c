import type { ChooseModel } from '../../state/choose/choose-model';
import type { Board } from './use-board';

/** Where the cue ball should come to rest. */
export function ZoneMark({ choose, board }: { choose: ChooseModel; board: Board }) {
  const { zone } = choose.open.value;
  if (zone === null) return null;
  const map = board.map.value;
  const { x, y } = map.toPoint(zone);
  const radiusPx = zone.radiusM * map.pxPerM;
  return (
    <g class="zone-mark" transform={`translate(${x} ${y})`}>
      <circle r={radiusPx} />
      <path d="M-5 0H5M0 -5V5" />
      <text y={-9} text-anchor="middle">
        zone
      </text>
    </g>
  );
}
