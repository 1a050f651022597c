import type { Label } from '../../diagram/canvas';
import type { Band, ShooterView } from '../../diagram/shooter-view';

interface Props {
  readonly view: ShooterView;
  readonly topY: number;
  readonly isOld: boolean;
}

/** Two bands about the aim: with edges the aims that go, without them how sure the aim is. */
export function AimBands({ view, topY, isOld }: Props) {
  const { band, haze, bandLabels } = view;
  const height = view.ruler.y - topY;
  const [goes, sure] = bandLabels;
  return (
    <g class={isOld ? 'aim-bands is-old' : 'aim-bands'}>
      <defs>
        <linearGradient id="aim-haze">
          <stop offset="0" class="haze-edge" />
          <stop offset="0.35" class="haze-middle" />
          <stop offset="0.65" class="haze-middle" />
          <stop offset="1" class="haze-edge" />
        </linearGradient>
      </defs>
      {haze && <Upright band={haze} class="aim-haze" y={topY} height={height} />}
      {band && <Upright band={band} class="aim-band" y={topY} height={height} />}
      {band && goes && <BandName label={goes} text="goes" class="band-sample" />}
      {haze && sure && <BandName label={sure} text="how sure" class="haze-sample" />}
    </g>
  );
}

interface UprightProps {
  readonly band: Band;
  readonly class: string;
  readonly y: number;
  readonly height: number;
}

function Upright({ band: { fromX, toX }, class: className, y, height }: UprightProps) {
  return (
    <rect class={className} x={fromX} width={Math.max(1, toX - fromX)} y={y} height={height} />
  );
}

/** Width of the small picture of the band, and clear space beside it, px. */
const SWATCH_PX = 10;
const GAP_PX = 5;

function BandName({
  label,
  text,
  class: className,
}: {
  label: Label;
  text: string;
  class: string;
}) {
  const { x, y, anchor } = label;
  const isStart = anchor === 'start';
  const along = SWATCH_PX + GAP_PX;
  return (
    <>
      <rect
        class={className}
        x={isStart ? x : x - SWATCH_PX}
        y={y - SWATCH_PX}
        width={SWATCH_PX}
        height={SWATCH_PX + 2}
      />
      <text x={isStart ? x + along : x - along} y={y} text-anchor={anchor}>
        {text}
      </text>
    </>
  );
}
