import type { CardBlock } from '../../diagram/card-sheet';
import {
  type AimTable,
  CARD_SPEEDS,
  type CardFigures,
  SURE_AT,
} from '../../state/cards/card-figures';
import type { CardPart } from '../../state/cards/cards-model';
import { dayWords } from '../../units/ago-words';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { DISTANCE_UNITS, distanceInUnit } from '../../units/distance-unit';
import { formatNumber, formatQuantity } from '../../units/format-number';
import { BRIDGE } from '../../units/kit-units';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import { spreadFigure } from '../../units/plus-minus';
import { speedWord } from '../../units/speed-word';
import type { LaterModels } from '../app-models';
import { SHELF_LABELS, SHELVES } from '../kit/shelf-labels';
import { seenRecord } from '../kit/shelf-words';

export type CardApp = LaterModels<
  'shot' | 'kit' | 'measure' | 'player' | 'desk' | 'nowMs' | 'cards'
>;

const NO_AIM = '–';
const NO_BREAK = '\u00a0';

/** The front and the back of the card of the kit in play. */
export function cardSides(app: CardApp, figures: CardFigures): readonly (readonly CardBlock[])[] {
  const { cards, desk, kit, shot } = app;
  const { pivotM, runs, level, raised } = figures;
  const on = (part: CardPart, block: () => CardBlock) =>
    cards.parts.value.has(part) ? [block()] : [];
  const { facts, inUnit } = shot.speedScale.value;
  return [
    [
      { title: kit.current.cues.value.name, lines: kitLines(app) },
      ...on('level', () => aimBlock(app, level, 'Where to aim, cue level')),
      ...on('pivot', () => {
        const shown = BRIDGE(desk.preferences.value, 0);
        return {
          title: `Pivot length ${formatQuantity(pivotM * shown.shownPerSi, shown.facts)}`,
          lines: ['For a little side, from the ball back to the bridge.'],
        };
      }),
      ...on('runs', () => ({
        title: 'Lag and run: speed that rolls so far',
        lines: ['Table lengths from one end. There and back, as in a lag: 2.'],
        rows: [
          ['lengths', ...runs.map(({ lengths }) => `${lengths}`)],
          [facts.symbol, ...runs.map(({ speedMps }) => formatNumber(inUnit(speedMps), facts))],
        ],
      })),
    ],
    [
      ...on('raised', () => {
        const { lines = [], ...block } = aimBlock(app, raised, 'Where to aim, cue raised');
        return { ...block, lines: [...lines, RAISED_WARNING] };
      }),
      ...on('throw', () => throwBlock(app, figures)),
      { lines: [LEAGUE] },
    ],
  ];
}

const RAISED_WARNING = '▲ A raised cue can tear the cloth and send a ball off the table.';
const LEAGUE = 'A card may be allowed where a phone is not: ask your league.';

function kitLines(app: CardApp): readonly string[] {
  const { kit, player, cards, measure } = app;
  // With its year, for paper grows old.
  const day = dayWords(app.nowMs(), 0);
  const name = cards.parts.value.has('player') ? `${player.inPlay.value.name}, ` : '';
  const isUnmeasured = measure.measured.value.length === 0;
  return [
    ...SHELVES.map((shelf) => {
      const record = kit.current[shelf].value;
      const { source } = seenRecord(app, shelf, record);
      return `${SHELF_LABELS[shelf]}: ${record.name} (${source})`;
    }),
    `${name}${day}.${isUnmeasured ? NOT_MEASURED[kit.isDefault.value ? 'example' : 'own'] : ''}`,
  ];
}

const NOT_MEASURED = {
  example: ' INVENTED EXAMPLE KIT: nothing measured.',
  own: ' NOT MEASURED: by numbers set by hand.',
};

/** Straight shots: from each distance, at each speed, with each side. */
function aimBlock(app: CardApp, { elevationRad, rows, sdM }: AimTable, title: string): CardBlock {
  const { shot, desk } = app;
  const { lead } = desk.preferences.value;
  const tip = shot.tipScale.value;
  const scale = unitScale(app);
  const sides = SIDE_MARKS.map((mark) =>
    formatQuantity(mark * tip.markedRadii * tip.perRadius, tip.facts),
  );
  const distance = (lengthM: number) => distanceWords(app, lengthM);
  const sureAt = rows[SURE_AT.row]?.distanceM ?? 0;
  const sure = sdM === null ? NO_AIM : spreadFigure(scale.of(sdM), scale.facts);
  return {
    title: `${title} ${formatQuantity(degreesOf(elevationRad), DEGREES)}`,
    rows: [
      ['speed', ...speedWords(app)],
      ['right side', ...CARD_SPEEDS.flatMap(() => sides)],
      ...rows.map(({ distanceM, offsetsM }) => [
        distance(distanceM),
        ...offsetsM.map((offsetM) => cell(offsetM, scale)),
      ]),
    ],
    lines: [
      `In ${scale.words}, ← left or → right of the ${lead.replace('-', ' ')}’s centre, straight on. Rows: cue ball to ghost ball. Left side: the other way.`,
      `Sure to ${sure} (one standard deviation) at ${distance(sureAt)}, ${speedWord(CARD_SPEEDS[SURE_AT.speed] ?? 0)}, ${sides.at(-1)}.`,
      ...(rows.some(({ offsetsM }) => offsetsM.includes(null))
        ? [`${NO_AIM} No aim: mostly too soft to get there.`]
        : []),
    ],
  };
}

/** The contacts told of, in marks of the tip's face. */
const SIDE_MARKS = [1, 2];

interface UnitScale {
  readonly words: string;
  readonly facts: Parameters<typeof formatNumber>[1];
  of(lengthM: number): number;
}

const WIDTHS = { decimals: 2, leastDecimals: 2, eighths: false };

/** The unit in which a card tells aims. */
function unitScale({ cards, kit }: Pick<CardApp, 'cards' | 'kit'>): UnitScale {
  const unit = cards.unit.value;
  if (unit !== 'balls' && unit !== 'tips') {
    const facts = LENGTH_UNITS[unit];
    return { words: facts.name, facts, of: (lengthM) => lengthInUnit(lengthM, unit) };
  }
  const { cues, balls } = kit.current;
  const widthM = unit === 'balls' ? 2 * balls.value.ballRadiusM : cues.value.tipDiameterM;
  return {
    words: unit === 'balls' ? 'ball widths' : 'widths of the tip',
    facts: WIDTHS,
    of: (lengthM) => lengthM / widthM,
  };
}

/** "0.13 ←"; no arrow where the figure is nought. */
function cell(offsetM: number | null, { of, facts }: UnitScale): string {
  if (offsetM === null) return NO_AIM;
  const figure = formatNumber(of(Math.abs(offsetM)), facts);
  if (Number(figure) === 0) return figure;
  return `${figure}${offsetM < 0 ? '←' : '→'}`;
}

/** In one piece where lines are broken. */
function distanceWords({ kit, desk }: Pick<CardApp, 'kit' | 'desk'>, lengthM: number): string {
  const { distanceUnit } = desk.preferences.value;
  const { lengthM: tableLengthM } = kit.current.tables.value;
  const distance = distanceInUnit(lengthM, distanceUnit, tableLengthM);
  return formatQuantity(distance, DISTANCE_UNITS[distanceUnit]).replaceAll(' ', NO_BREAK);
}

/** "soft 0.75 m/s", for each column of speeds. */
function speedWords({ shot }: Pick<CardApp, 'shot'>): readonly string[] {
  const { facts, inUnit } = shot.speedScale.value;
  return CARD_SPEEDS.map((mps) => `${speedWord(mps)} ${formatQuantity(inUnit(mps), facts)}`);
}

function throwBlock(app: CardApp, { throws, throwFromM }: CardFigures): CardBlock {
  const degrees = { ...DEGREES, leastDecimals: 1 };
  return {
    title: 'Throw without side, towards fuller',
    rows: [
      ['cut', ...speedWords(app)],
      ...throws.map(({ cutRad, thrownRad }) => [
        formatQuantity(degreesOf(cutRad), DEGREES),
        ...thrownRad.map((rad) =>
          rad === null ? NO_AIM : formatQuantity(degreesOf(rad), degrees),
        ),
      ]),
    ],
    lines: [
      `Off the line of centres, from ${distanceWords(app, throwFromM)}, cue level. Aims on this card allow for it already.`,
    ],
  };
}
