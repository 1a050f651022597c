import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { SpreadBalls } from '../../diagram/spread-balls';
import { isBanded } from '../../diagram/table-balls';
import type { BallName } from '../../engine/lie/position';
import type { ChooseModel } from '../../state/choose/choose-model';

interface FaceProps {
  readonly spread: ReadonlySignal<SpreadBalls>;
  readonly name: BallName;
  readonly radiusPx: number;
}

/** Of a radius: how high the numbers are, and where the edges of a band run. */
const ALONE = 1.3;
const IN_BAND = 1.1;
const BAND = 0.7;

function usePlace({ spread, name }: FaceProps): ReadonlySignal<string> {
  return useComputed(() => {
    const { x, y } = spread.value.places.get(name) ?? { x: 0, y: 0 };
    return `translate(${x.toFixed(1)} ${y.toFixed(1)})`;
  });
}

/** One ball, without its number. While it is dragged nothing of it changes but where it is. */
export function BallDisc({ choose, ...props }: FaceProps & { choose: ChooseModel }) {
  const { name, radiusPx } = props;
  const place = usePlace(props);
  const look = useComputed(() => {
    const isSelected = choose.selected.value === name;
    const isPlayed = choose.open.value.goal.ball === name;
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

/** A ball's number, or the cue ball's dot: in a layer above all balls. */
export function BallFace(props: FaceProps) {
  const { name, radiusPx } = props;
  const highPx = radiusPx * (isBanded(name) ? IN_BAND : ALONE);
  return (
    <g transform={usePlace(props)} font-size={highPx}>
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
