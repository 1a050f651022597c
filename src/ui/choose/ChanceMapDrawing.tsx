import type { Signal } from '@preact/signals';
import {
  bestCell,
  type ChanceCell,
  type ChanceGrid,
  cellBeside,
} from '../../diagram/table-chances';
import type { Models } from '../app-models';
import { easeWords, type Telling, tellingOf } from '../chance-telling';
import { tipOf } from '../shot/tip-told';
import { cellWords, mapWords, shortSpeed } from './chance-words';
import './ChanceMap.css';

/** Of a cell, in the drawing's own units. */
const WIDE = 36;
const HIGH = 26;

export type PickedCell = Pick<ChanceCell, 'column' | 'row'>;

interface Props {
  readonly app: Models<'shot' | 'choose' | 'player' | 'desk'>;
  readonly grid: ChanceGrid;
  /** Kept by the caller, so that it is still there when the map comes back. */
  readonly picked: Signal<PickedCell | null>;
  /** Told that the map is left. */
  onLook(key: string): void;
}

/** The button of the map among the rows of the list. */
const MAP_KEY = 'map';

/** Chance over side and speed: each cell says how many in 10 go, or in a letter how easy it is; a tap or the buttons pick one. */
export function ChanceMapDrawing({ app, grid, picked, onLook }: Props) {
  const scale = app.shot.speedScale.value;
  const tip = tipOf(app);
  const telling = tellingOf(app);
  const best = bestCell(grid);
  const at = picked.value ?? best ?? { column: Math.floor(grid.sides.length / 2), row: 0 };
  const cell = cellBeside(grid, at, 0, 0);
  const pick = (next: ChanceCell | null) => {
    if (next) picked.value = { column: next.column, row: next.row };
  };
  return (
    <section class="chance-map" aria-labelledby="chance-map">
      <h2 id="chance-map">
        {telling === 'figures'
          ? 'About how many in 10 go, over side and speed'
          : 'About how easy it is for most, over side and speed: E easy, F fair, H hard'}
      </h2>
      {app.choose.open.value.zone !== null && <p class="way-reason">Whatever the zone.</p>}
      <div class="chance-axes">
        <span class="axis-speed" aria-hidden="true">
          {[...grid.speedsMps].reverse().map((speedMps) => (
            <span key={speedMps}>{shortSpeed(speedMps, scale)}</span>
          ))}
        </span>
        <svg
          role="img"
          aria-label={mapWords(grid, scale, telling, tip)}
          viewBox={`0 0 ${WIDE * grid.sides.length} ${HIGH * grid.rows.length}`}
          onPointerUp={(event) => pick(cellUnder(event, grid))}
        >
          <Cells grid={grid} at={at} telling={telling} />
        </svg>
        <span class="axis-side" aria-hidden="true">
          <span>← left side</span>
          <span>none</span>
          <span>right side →</span>
        </span>
      </div>
      {cell && (
        <CellPicker
          app={app}
          grid={grid}
          cell={cell}
          words={cellWords(cell, grid, scale, telling, tip)}
          pick={pick}
          onLook={onLook}
        />
      )}
    </section>
  );
}

interface CellsProps {
  readonly grid: ChanceGrid;
  readonly at: PickedCell;
  readonly telling: Telling;
}

function Cells({ grid, at, telling }: CellsProps) {
  const most = bestCell(grid)?.best?.chance.share ?? 1;
  const shareAt = cellBeside(grid, at, 0, 0)?.best?.chance.share;
  const top = (row: number) => HIGH * (grid.rows.length - 1 - row);
  return (
    <>
      {grid.rows.flat().map(({ column, row, best }) => (
        <g
          key={`${column} ${row}`}
          class={`chance-cell is-${shadeOf(best?.chance.share, most)}`}
          transform={`translate(${WIDE * column} ${top(row)})`}
        >
          <rect width={WIDE - 1} height={HIGH - 1} />
          <text x={WIDE / 2} y={HIGH * 0.68} text-anchor="middle">
            {best ? cellFigure(best.chance.share, telling) : '·'}
          </text>
        </g>
      ))}
      <rect
        class={`chance-picked is-${shadeOf(shareAt, most)}`}
        x={WIDE * at.column + 1.5}
        y={top(at.row) + 1.5}
        width={WIDE - 4}
        height={HIGH - 4}
      />
    </>
  );
}

/** A figure without its unit, or the first letter of a word. */
function cellFigure(share: number, telling: Telling): string {
  return telling === 'figures'
    ? `${Math.round(share * 10)}`
    : easeWords(share).charAt(0).toUpperCase();
}

/** Darker towards the best of the map, in five steps; the figure says how much it is. */
function shadeOf(share: number | undefined, most: number): string {
  if (share === undefined) return 'none';
  return `${Math.min(4, Math.floor((share / Math.max(most, Number.MIN_VALUE)) ** 2 * 5))}`;
}

function cellUnder(event: MouseEvent, grid: ChanceGrid): ChanceCell | null {
  if (!(event.currentTarget instanceof Element)) return null;
  const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
  const column = Math.floor(((event.clientX - left) / width) * grid.sides.length);
  const down = Math.floor(((event.clientY - top) / height) * grid.rows.length);
  return cellBeside(grid, { column, row: grid.rows.length - 1 - down }, 0, 0);
}

interface PickerProps {
  readonly app: Models<'choose'>;
  readonly grid: ChanceGrid;
  readonly cell: ChanceCell;
  readonly words: string;
  pick(cell: ChanceCell | null): void;
  onLook(key: string): void;
}

const STEPS: readonly (readonly [string, string, number, number])[] = [
  ['←', 'More left side', -1, 0],
  ['→', 'More right side', 1, 0],
  ['−', 'Slower', 0, -1],
  ['+', 'Faster', 0, 1],
];

function CellPicker({ app: { choose }, grid, cell, words, pick, onLook }: PickerProps) {
  return (
    <div class="cell-picker">
      <p role="status">{words}</p>
      {STEPS.map(([sign, label, right, up]) => (
        <button
          key={label}
          type="button"
          class="button"
          aria-label={label}
          onClick={() => pick(cellBeside(grid, cell, right, up))}
        >
          <span aria-hidden="true">{sign}</span>
        </button>
      ))}
      <button
        type="button"
        class="button cell-look"
        data-way={MAP_KEY}
        disabled={cell.best === null}
        onClick={() => {
          if (!cell.best) return;
          onLook(MAP_KEY);
          choose.chooseCell(cell.best.stroke.side, cell.best.stroke.speedMps);
        }}
      >
        Look at it
      </button>
    </div>
  );
}
