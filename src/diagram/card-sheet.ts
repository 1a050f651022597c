import { textWidthPx } from './canvas';

/** A side of a card, A6 upright, in tenths of a millimetre. */
export const CARD_SIZE = { width: 1050, height: 1480 } as const;
/** Clear on all sides: printers do not reach the edge. */
const MARGIN = 60;
const WIDTH = CARD_SIZE.width - 2 * MARGIN;
const BOTTOM = CARD_SIZE.height - MARGIN;

/** What stands together on a card, from above: title, rows, lines, drawing, boxes. */
export interface CardBlock {
  readonly title?: string;
  /** Cells beside each other; those after the first share what it leaves. */
  readonly rows?: readonly (readonly string[])[];
  readonly lines?: readonly string[];
  /** How high a drawing is to be. */
  readonly drawing?: number;
  /** How many boxes to tick. */
  readonly boxes?: number;
}

export interface CardText {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly text: string;
  readonly look: 'start' | 'middle' | 'title';
}

/** A side of a card laid out. */
export interface CardSheet {
  readonly texts: readonly CardText[];
  /** Under titles and rows, as an SVG path. */
  readonly rules: string;
  readonly boxes: string;
  /** The top of the drawing. */
  readonly drawingY: number;
}

/** Of the text's height. */
const LINE = 1.32;
const ROW = 1.5;
const TITLE = 1.15;
const GAP = 0.7;
/** Further apart, blocks would not be one card. */
const MOST_MORE = 1.5;
/** From a text's foot to the rule under it. */
const UNDER = 0.35;
const TEXT = 42;
/** Smaller by so much until all of it fits. */
const SHRINK = 0.94;
/** Share of a row that its first cell takes. */
const FIRST_CELL = 0.24;
const BOXES_IN_ROW = 10;
/** From a box to the next, and how much of that it takes. */
const BOX = WIDTH / BOXES_IN_ROW;
const BOX_SIDE = BOX * 0.8;

/** Lays blocks out under one another, as large as they fit, and over all the height there is. */
export function layOutCard(blocks: readonly CardBlock[], size = TEXT): CardSheet {
  const sheet = laidOut(blocks, size, GAP);
  const spare = (BOTTOM - sheet.y) / size;
  if (spare < 0) return size > 1 ? layOutCard(blocks, size * SHRINK) : sheet;
  return laidOut(blocks, size, GAP + Math.min(MOST_MORE, spare / blocks.length));
}

function laidOut(blocks: readonly CardBlock[], size: number, gap: number): Sheet {
  const sheet = new Sheet(size, gap);
  for (const block of blocks) sheet.add(block);
  return sheet;
}

class Sheet implements CardSheet {
  readonly texts: CardText[] = [];
  rules = '';
  boxes = '';
  drawingY = 0;
  /** The bottom of what was added last. */
  y = MARGIN;
  constructor(
    private readonly size: number,
    private readonly gap: number,
  ) {}

  add({ title, rows = [], lines = [], drawing, boxes = 0 }: CardBlock): void {
    if (this.texts.length > 0) this.y += this.size * this.gap;
    if (title) {
      this.wrap(title, 'title', this.size * TITLE);
      this.rule();
    }
    for (const row of rows) {
      this.y += this.size * ROW;
      const cells = cellsOf(row);
      // One size for all of a row.
      const size = Math.min(...cells.map(({ cell, room }) => fitted(cell, room, this.size)));
      for (const { cell, x, look } of cells) this.write(cell, x, look, size);
      this.rule();
    }
    if (title && lines.length > 0) this.y += this.size * (1 - TITLE + UNDER);
    for (const line of lines) this.wrap(line, 'start');
    if (drawing) {
      this.drawingY = this.y;
      this.y += drawing;
    }
    this.boxes += boxesUnder(this.y, boxes);
    this.y += Math.ceil(boxes / BOXES_IN_ROW) * BOX;
  }

  private wrap(text: string, look: CardText['look'], size = this.size): void {
    const most = WIDTH / textWidthPx(1, size);
    for (const line of inLines(text, ({ length }) => length <= most)) {
      this.y += size * LINE;
      this.write(line, MARGIN, look, fitted(line, WIDTH, size));
    }
  }

  private write(text: string, x: number, look: CardText['look'], size: number): void {
    this.texts.push({ x, y: this.y - this.size * UNDER, size, text, look });
  }

  private rule(): void {
    this.rules += `M${MARGIN} ${this.y.toFixed(1)}h${WIDTH}`;
  }
}

/** A longer text than there is room for is smaller. */
function fitted(text: string, room: number, size: number): number {
  return Math.min(size, (size * room) / textWidthPx(text.length, size));
}

function cellsOf(row: readonly string[]) {
  const first = WIDTH * FIRST_CELL;
  const each = (WIDTH - first) / (row.length - 1);
  return row.map((cell, at) =>
    at === 0
      ? { cell, x: MARGIN, room: first * 0.94, look: 'start' as const }
      : { cell, x: MARGIN + first + each * (at - 0.5), room: each * 0.92, look: 'middle' as const },
  );
}

function boxesUnder(y: number, count: number): string {
  return Array.from({ length: count }, (_, at) => {
    const x = MARGIN + (at % BOXES_IN_ROW) * BOX;
    const top = y + Math.floor(at / BOXES_IN_ROW) * BOX + BOX - BOX_SIDE;
    return `M${x} ${top.toFixed(1)}h${BOX_SIDE}v${BOX_SIDE}h${-BOX_SIDE}z`;
  }).join('');
}

/** A text broken between words into lines that fit; a word that does not has one to itself. */
export function inLines(text: string, fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
