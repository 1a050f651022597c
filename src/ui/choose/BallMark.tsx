import { useComputed } from '@preact/signals';
import { isBanded, radiusAmong } from '../../diagram/table-balls';
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

/** A number smaller than this could not be read, px; it then reaches over its ball's edge. */
const LEAST_NUMBER_PX = 9;

/** Where a ball is drawn, and how large: while it is dragged hardly more changes than the place. */
function useMark({ choose, board, name }: Props) {
  const ball = useComputed(() => choose.open.value.balls.find((one) => one.name === name));
  const place = useComputed(() => {
    const { x, y } = board.map.value.toPoint(ball.value ?? { xM: 0, yM: 0 });
    return `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
  });
  const radius = useComputed(() => {
    const size = board.size.value;
    if (!ball.value) return size.radiusPx;
    return radiusAmong(ball.value, choose.open.value.balls, size, board.map.value);
  });
  return { place, radiusPx: radius.value };
}

/** The ball itself; its number lies in a layer above all balls. */
export function BallDisc(props: Props) {
  const { choose, name } = props;
  const { place, radiusPx } = useMark(props);
  const look = useComputed(() => {
    const isSelected = choose.selected.value === name;
    const isPlayed = choose.open.value.intent.ball === name;
    return `board-ball${isSelected ? ' is-selected' : ''}${isPlayed ? ' is-played' : ''}`;
  });
  return (
    <g class={look} transform={place}>
      <circle class="ball-halo" r={radiusPx + 5} />
      <circle class={name === 'cue' ? 'ball-body is-cue' : 'ball-body'} r={radiusPx} />
      {isBanded(name) && <path class="ball-band" d={bandPath(radiusPx)} />}
    </g>
  );
}

/** A number, or the cue ball's dot. */
export function BallFace(props: Props) {
  const { name } = props;
  const { place, radiusPx } = useMark(props);
  const highPx = Math.max(LEAST_NUMBER_PX, radiusPx * (isBanded(name) ? IN_BAND : ALONE));
  return (
    <g transform={place} font-size={highPx}>
      {name === 'cue' ? (
        <circle class="ball-dot" r={radiusPx * 0.28} />
      ) : (
        <text class="ball-number" text-anchor="middle" y={highPx * 0.35}>
          {name}
        </text>
      )}
    </g>
  );
}

/** Two chords across a ball, above its number and below. */
function bandPath(radiusPx: number): string {
  const y = BAND * radiusPx;
  const x = Math.sqrt(radiusPx * radiusPx - y * y);
  return `M${-x} ${-y}H${x}M${-x} ${y}H${x}`;
}
