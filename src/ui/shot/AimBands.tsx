import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Label } from '../../diagram/canvas';
import type { Band, ShooterView } from '../../diagram/shooter-view';
import { type Drawing, type Part, useAttributes } from '../live-drawing';
import { LiveText, Shown } from '../live-parts';
import { topOf } from './upright-top';

interface Props {
  readonly of: Drawing<ShooterView>;
  readonly isOld: ReadonlySignal<boolean>;
}

/** Two bands about the aim: with edges the aims that go, without them how sure the aim is. */
export function AimBands({ of, isOld }: Props) {
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
      <Shown of={of} what={({ haze }) => haze}>
        {(haze) => <Upright of={of} band={haze} class="aim-haze" />}
      </Shown>
      <Shown of={of} what={({ band }) => band}>
        {(band) => <Upright of={of} band={band} class="aim-band" />}
      </Shown>
      <Shown of={of} what={({ band, bandLabels: [goes = null] }) => band && goes}>
        {(label) => <BandName of={of} label={label} text="goes" class="band-sample" />}
      </Shown>
      <Shown of={of} what={({ haze, bandLabels: [, sure = null] }) => haze && sure}>
        {(label) => <BandName of={of} label={label} text="how sure" class="haze-sample" />}
      </Shown>
    </g>
  );
}

interface UprightProps extends Pick<Props, 'of'> {
  readonly band: Part<ShooterView, Band>;
  readonly class: string;
}

function Upright({ of, band, class: className }: UprightProps) {
  const box = useAttributes(of, (now) => {
    const [{ fromX, toX }, y] = [band(now), topOf(now)];
    return { x: fromX, width: Math.max(1, toX - fromX), y, height: now.ruler.y - y };
  });
  return <rect class={className} {...box} />;
}

/** Width of the small picture of the band, and clear space beside it, px. */
const SWATCH_PX = 10;
const GAP_PX = 5;

interface NameProps extends Pick<Props, 'of'> {
  readonly label: Part<ShooterView, Label>;
  readonly text: string;
  readonly class: string;
}

function BandName({ of, label, text, class: className }: NameProps) {
  const place = useAttributes(of, (now) => {
    const { x, y, anchor } = label(now);
    return { x: anchor === 'start' ? x : x - SWATCH_PX, y: y - SWATCH_PX };
  });
  const beside: typeof label = (now) => {
    const { x, y, anchor } = label(now);
    return { x: x + (anchor === 'start' ? 1 : -1) * (SWATCH_PX + GAP_PX), y, anchor };
  };
  return (
    <>
      <rect class={className} {...place} width={SWATCH_PX} height={SWATCH_PX + 2} />
      <LiveText of={of} at={beside}>
        {text}
      </LiveText>
    </>
  );
}
