import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Shot } from '../../engine/direct/shot';
import type { FieldName } from '../../state/shot-fields';
import { degreesOf } from '../../units/angle-degrees';
import type { Models } from '../app-models';
import { useSteady } from '../use-steady';
import { fieldWindowWords, isRoomStale } from './room-of-field';
import type { TileWords } from './tile-text';
import { INPUT_LABELS, type InputName, tileWords } from './tile-words';
import { WindowBar } from './WindowBar';
import './InputTiles.css';
import './SmallTiles.css';

/** In the order they are shown: how the balls lie, then how the cue ball is struck. */
export const INPUT_NAMES: readonly InputName[] = [
  'distance',
  'cut',
  'pocket',
  'speed',
  'tip',
  'raised',
];

/** What a stroke may be off by, and the number that shows it. */
const STROKE_FIELDS: { readonly [I in InputName]?: FieldName } = {
  speed: 'speed',
  tip: 'side',
  raised: 'elevation',
};

/** Signs for units whose words have no room in a tile; what is heard keeps the words. */
const SIGNS: { readonly [symbol: string]: string } = { diamond: '◆', diamonds: '◆' };

interface Props {
  readonly app: Models<'shot' | 'room' | 'desk' | 'router'>;
  /** The input whose control is open, if any; the tiles then shrink to one row. */
  readonly open: InputName | null;
}

/** What is asked of the shot; a tile opens its control. */
export function InputTiles({ app, open }: Props) {
  return (
    <div class={open ? 'input-tiles is-compact' : 'input-tiles'}>
      {INPUT_NAMES.map((name) => (
        <Tile key={name} app={app} name={name} isOpen={name === open} />
      ))}
      {open && (
        <button
          type="button"
          class="input-tile input-close"
          aria-label="Close"
          onClick={() => app.router.close()}
        >
          <span aria-hidden="true">✓</span>
          <span class="tile-label">Done</span>
        </button>
      )}
    </div>
  );
}

interface TileProps {
  readonly app: Models<'shot' | 'room' | 'desk' | 'router'>;
  readonly name: InputName;
  readonly isOpen: boolean;
}

function Tile({ app, name, isOpen }: TileProps) {
  const { shot, desk, router } = app;
  const words = useSteady(() => tileWords(name, shot, desk.preferences.value));
  const field = STROKE_FIELDS[name];
  const spoken = useComputed(() => {
    const room = field && !isRoomStale(app) ? fieldWindowWords(app, field) : '';
    return spokenTile(INPUT_LABELS[name], words.value, room);
  });
  return (
    <button
      type="button"
      class={`input-tile is-${name}`}
      aria-label={spoken}
      data-opens={name}
      aria-expanded={isOpen}
      aria-controls={isOpen ? 'input-control' : undefined}
      onClick={() => (isOpen ? router.close() : router.open(name))}
    >
      <span class="tile-label">{INPUT_LABELS[name]}</span>
      <span class="tile-value">
        <b>{useComputed(() => words.value.figure)}</b>
        <TileSymbol words={words} />
      </span>
      <span class="tile-word">{useComputed(() => words.value.word)}</span>
      {name === 'tip' && <TipGlyph shot={shot.shot} />}
      {name === 'raised' && <ElevationGlyph shot={shot.shot} />}
      {field && <WindowBar app={app} name={field} />}
    </button>
  );
}

function spokenTile(label: string, { figure, symbol, word }: TileWords, room: string): string {
  return `${label} ${figure} ${symbol} ${word} ${room && `goes ${room}`}`
    .replace(/[←→↑↓]/g, '')
    .replace(/ +/g, ' ')
    .trim();
}

function TileSymbol({ words }: { words: ReadonlySignal<TileWords> }) {
  const symbol = useComputed(() => words.value.symbol).value;
  if (symbol === '') return null;
  return (
    <span class={symbol === '°' ? 'tile-degree' : 'tile-symbol'}>{SIGNS[symbol] ?? symbol}</span>
  );
}

interface GlyphProps {
  readonly shot: ReadonlySignal<Shot>;
}

/** A small picture of where the tip touches the cue ball. */
function TipGlyph({ shot }: GlyphProps) {
  const [cx, cy] = [useComputed(() => shot.value.side), useComputed(() => -shot.value.height)];
  return (
    <svg class="tile-glyph" viewBox="-1.12 -1.12 2.24 2.24" aria-hidden="true">
      <circle r="1" />
      <path d="M-1 0H1M0 -1V1" class="glyph-cross" />
      <circle r="0.2" cx={cx} cy={cy} class="glyph-dot" />
    </svg>
  );
}

/** A small picture of the cue's slope; drawn a little steeper than true, to be seen at 3°. */
function ElevationGlyph({ shot }: GlyphProps) {
  const slope = useComputed(() => {
    const shown = Math.min(75, degreesOf(shot.value.elevationRad) * 1.2);
    return `rotate(${shown} 0.2 -0.35)`;
  });
  return (
    <svg class="tile-glyph is-wide" viewBox="-2.4 -2.2 3.6 2.4" aria-hidden="true">
      <path d="M-2.4 0.1H1.2" class="glyph-cross" />
      <circle r="0.45" cx="0.7" cy="-0.35" />
      <path d="M0.2 -0.35H-2.4" class="glyph-cue" transform={slope} />
    </svg>
  );
}
