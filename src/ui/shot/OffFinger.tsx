import { type ReadonlySignal, useComputed } from '@preact/signals';
import { offFinger } from '../../diagram/off-finger';
import type { TipContact } from '../../diagram/tip-face';
import type { Models, OffFingerProps } from '../app-models';
import { type Drawing, useAttributes, useDrawing } from '../live-drawing';
import { LiveWord } from '../live-parts';
import { canvasAttributes } from '../use-canvas';
import { useFollowed } from '../use-followed';
import { tileWords } from './tile-words';
import './OffFinger.css';

/** What the note says and shows, and where its corner stands, px. */
interface Note {
  readonly x: number;
  readonly y: number;
  readonly figure: string;
  readonly word: string;
  readonly contact: TipContact;
}

/**
 * What a finger sets, told off it, for it covers what it drags: the figure as the tile tells it,
 * and of the tip where it touches the ball. Gone as the finger is up.
 */
export function OffFinger(props: OffFingerProps) {
  const { finger, app } = props;
  useFollowed(() => {
    if (!app.shot.isHeld.value) finger.value = null;
  });
  const sets = useComputed(() => finger.value?.sets ?? null).value;
  return sets && <Shown key={sets} {...props} isTip={sets === 'tip'} />;
}

/** In heights of text. */
const WIDTH = 8.5;
const HEIGHT = 4.1;
const FACE = 3;

function Shown(props: OffFingerProps & { readonly isTip: boolean }) {
  const { canvas, isTip, app } = props;
  const of = useDrawing(useNote(props));
  const { textPx } = canvas.value;
  const faceY = (FACE + 0.5) * textPx;
  const textY = (isTip ? 2 * FACE + 2.1 : 2) * textPx;
  return (
    <svg class="off-finger" aria-hidden="true" {...canvasAttributes(canvas.value)}>
      <g {...useAttributes(of, ({ x, y }) => ({ transform: `translate(${x} ${y})` }))}>
        <rect width={WIDTH * textPx} height={heightOf(isTip, textPx)} rx="6" />
        {isTip && (
          <g transform={`translate(${(WIDTH / 2) * textPx} ${faceY}) scale(${FACE * textPx})`}>
            <Face of={of} app={app} />
          </g>
        )}
        <text class={isTip ? undefined : 'is-figure'} x={(WIDTH / 2) * textPx} y={textY}>
          <LiveWord of={of} word={({ figure }) => figure} />
        </text>
        <text x={(WIDTH / 2) * textPx} y={textY + 1.4 * textPx}>
          <LiveWord of={of} word={({ word }) => word} />
        </text>
      </g>
    </svg>
  );
}

function heightOf(isTip: boolean, textPx: number): number {
  return (isTip ? 2 * FACE + HEIGHT : HEIGHT) * textPx;
}

function useNote({
  app: { shot, desk },
  finger,
  canvas,
  abovePx,
  isTip,
}: OffFingerProps & { readonly isTip: boolean }): ReadonlySignal<Note> {
  return useComputed(() => {
    const { textPx } = canvas.value;
    const preferences = desk.preferences.value;
    const { sets = 'cut', at = { x: 0, y: 0 } } = finger.value ?? {};
    const { figure, symbol, word } = tileWords(sets, shot, preferences);
    const { x, y } = offFinger(
      at,
      {
        widthPx: WIDTH * textPx,
        heightPx: heightOf(isTip, textPx),
        isTall: isTip,
        freeSide: preferences.hand === 'left' ? 1 : -1,
        abovePx,
      },
      canvas.value,
    );
    const space = symbol === '' || symbol === '°' ? '' : ' ';
    return { x, y, figure: figure + space + symbol, word, contact: shot.shot.value };
  });
}

/** The cue ball's face with the tip on it, in its radii. */
function Face({ of, app: { shot, kit } }: { of: Drawing<Note>; app: Models<'shot' | 'kit'> }) {
  const { ballRadiusM, tipRadiusM } = kit.kit.value;
  const tipRadius = kit.current.cues.value.tipDiameterM / 2 / ballRadiusM;
  const dome = 1 + tipRadiusM / ballRadiusM;
  const at = ({ contact: { side, height } }: Note, out: number) => ({
    cx: side * out,
    cy: -height * out,
  });
  return (
    <>
      <circle class="tip-face-ball" r={1} />
      <path class="tip-face-cross" d="M-1 0H1M0 -1V1" />
      <circle class="tip-face-limit" r={shot.tipLimit} />
      <circle class="tip-face-tip" r={tipRadius} {...useAttributes(of, (now) => at(now, dome))} />
      <circle class="tip-face-contact" r={0.07} {...useAttributes(of, (now) => at(now, 1))} />
    </>
  );
}
