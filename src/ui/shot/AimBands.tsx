import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Label } from '../../diagram/canvas';
import type { Band, ShooterView } from '../../diagram/shooter-view';
import { type Live, LiveText, Shown, useAttributes } from '../live-parts';

interface Props {
  readonly view: ReadonlySignal<ShooterView>;
  readonly topY: Live<number>;
  readonly isOld: ReadonlySignal<boolean>;
}

/** Two bands about the aim: with edges the aims that go, without them how sure the aim is. */
export function AimBands({ view, topY, isOld }: Props) {
  const height = () => view.value.ruler.y - topY();
  const named = (band: 'band' | 'haze', at: 0 | 1) => () =>
    view.value[band] && (view.value.bandLabels[at] ?? null);
  return (
    <g class={useComputed(() => (isOld.value ? 'aim-bands is-old' : 'aim-bands'))}>
      <defs>
        <linearGradient id="aim-haze">
          <stop offset="0" class="haze-edge" />
          <stop offset="0.35" class="haze-middle" />
          <stop offset="0.65" class="haze-middle" />
          <stop offset="1" class="haze-edge" />
        </linearGradient>
      </defs>
      <Upright band={() => view.value.haze} class="aim-haze" y={topY} height={height} />
      <Upright band={() => view.value.band} class="aim-band" y={topY} height={height} />
      <BandName label={named('band', 0)} text="goes" class="band-sample" />
      <BandName label={named('haze', 1)} text="how sure" class="haze-sample" />
    </g>
  );
}

interface UprightProps {
  readonly band: Live<Band | null>;
  readonly class: string;
  readonly y: Live<number>;
  readonly height: Live<number>;
}

function Upright({ band, ...rest }: UprightProps) {
  return <Shown what={band}>{(at) => <Rect at={at} {...rest} />}</Shown>;
}

function Rect({
  at,
  class: className,
  y,
  height,
}: Omit<UprightProps, 'band'> & { at: Live<Band> }) {
  const box = useAttributes(() => {
    const { fromX, toX } = at();
    return { x: fromX, width: Math.max(1, toX - fromX), y: y(), height: height() };
  });
  return <rect class={className} {...box} />;
}

/** Width of the small picture of the band, and clear space beside it, px. */
const SWATCH_PX = 10;
const GAP_PX = 5;

interface NameProps {
  readonly label: Live<Label | null>;
  readonly text: string;
  readonly class: string;
}

function BandName({ label, ...rest }: NameProps) {
  return <Shown what={label}>{(at) => <Sampled at={at} {...rest} />}</Shown>;
}

function Sampled({ at, text, class: className }: Omit<NameProps, 'label'> & { at: Live<Label> }) {
  const along = SWATCH_PX + GAP_PX;
  const isStart = () => at().anchor === 'start';
  const place = useAttributes(() => {
    const { x, y } = at();
    return { x: isStart() ? x : x - SWATCH_PX, y: y - SWATCH_PX };
  });
  return (
    <>
      <rect class={className} {...place} width={SWATCH_PX} height={SWATCH_PX + 2} />
      <LiveText at={() => ({ ...at(), x: at().x + (isStart() ? along : -along) })}>{text}</LiveText>
    </>
  );
}
