import { useComputed } from '@preact/signals';
import { isBanded } from '../../diagram/table-balls';
import type { BallName } from '../../engine/position/position';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { Board } from './use-board';

interface Props {
  readonly choose: ChooseModel;
  readonly board: Board;
  readonly name: BallName;
}

/** Of a radius: how high the numbers are, and where the edges of a band run. */
const ALONE = 1.3;
const IN_BAND = 1.1;
const BAND = 0.7;

/** One ball. While it is dragged nothing of it changes but where it is. */
export function BallMark({ choose, board, name }: Props) {
  const place = useComputed(() => {
    const ball = choose.open.value.balls.find((one) => one.name === name);
    const { x, y } = board.map.value.toPoint(ball ?? { xM: 0, yM: 0 });
    return `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
  });
  const look = useComputed(() => {
    const isSelected = choose.selected.value === name;
    const isPlayed = choose.open.value.intent.ball === name;
    return `board-ball${isSelected ? ' is-selected' : ''}${isPlayed ? ' is-played' : ''}`;
  });
  const { radiusPx } = board.size.value;
  return (
    <g class={look} transform={place}>
      <circle class="ball-halo" r={radiusPx + 5} />
      <circle class={name === 'cue' ? 'ball-body is-cue' : 'ball-body'} r={radiusPx} />
      {name === 'cue' ? (
        <circle class="ball-dot" r={radiusPx * 0.28} />
      ) : (
        <BallNumber name={name} radiusPx={radiusPx} />
      )}
    </g>
  );
}

function BallNumber({ name, radiusPx }: { name: number; radiusPx: number }) {
  const highPx = radiusPx * (isBanded(name) ? IN_BAND : ALONE);
  return (
    <>
      {isBanded(name) && <path class="ball-band" d={bandPath(radiusPx)} />}
      <g font-size={highPx}>
        <text class="ball-number" text-anchor="middle" y={highPx * 0.35}>
          {name}
        </text>
      </g>
    </>
  );
}

/** Two chords across a ball, above its number and below. */
function bandPath(radiusPx: number): string {
  const y = BAND * radiusPx;
  const x = Math.sqrt(radiusPx * radiusPx - y * y);
  return `M${-x} ${-y}H${x}M${-x} ${y}H${x}`;
}
