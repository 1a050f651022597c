import type { KnownFigure } from '../../engine/player/learn';
import type { KnownPlayer } from '../../engine/player/player-report';
import type { Leans } from '../../state/player/leans';
import type { ShotTally } from '../../state/player/player-model';
import type { Player } from '../../store/player';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatNumber } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { Models } from '../app-models';
import { forWords } from './player-words';

const HUNDREDTHS = { ...DEGREES, decimals: 2, leastDecimals: 2 };
const figure = (angleRad: number) => formatNumber(degreesOf(angleRad), HUNDREDTHS);

/** What tells lengths as they are read, and how long a table is. */
export type StrayApp = Models<'kit' | 'desk'>;

/** How far lines that are off by angles are off a table length on, in the unit chosen: "5 to 9 mm". */
export function lengthAway({ kit, desk }: StrayApp, ...anglesRad: readonly number[]): string {
  const { lengthUnit } = desk.preferences.value;
  const { lengthM } = kit.current.tables.value;
  const facts = LENGTH_UNITS[lengthUnit];
  const far = anglesRad.map((rad) =>
    formatNumber(lengthInUnit(lengthM * Math.tan(rad), lengthUnit), facts),
  );
  return `${far.join(' to ')}\u00a0${facts.symbol}`;
}

/** The same of a line's scatter, and the ends of its central nine tenths: "7 mm (5 to 9 mm; 0.15°)". */
export function shortStray(app: StrayApp, { value, low, high }: KnownFigure, lead = ''): string {
  const ends = `${lead}${lengthAway(app, low, high)}`;
  return `${lengthAway(app, value)} (${ends}; ${figure(value)}°)`;
}

/** In a sentence that goes on: one standard deviation holds two of three. */
export function strayWords(app: StrayApp, line: KnownFigure): string {
  const far = shortStray(app, line, 'as far as is known ');
  return `a table length on, two of three shots are off their line by less than ${far}`;
}

/** What it is learnt from: "From 43 shots", "From 6 made of 10 and 43 shots". */
function sourceWords({ shots }: Pick<KnownPlayer, 'shots'>, { madeOf10 }: Player): string {
  const told = [
    ...(madeOf10 === null ? [] : [`${madeOf10} made of 10`]),
    ...(shots === 0 ? [] : [shotsWords(shots)]),
  ];
  return `From ${told.join(' and ')}`;
}

/** All in one: "From 43 shots: a table length on, … Your line leans a touch full on cuts." */
export function knownWords(
  app: StrayApp,
  known: KnownPlayer,
  leans: Leans,
  player: Player,
): string {
  const lean = leanWords(leans);
  const leaning = lean === '' ? '' : ` ${whoseWords(player)} line leans ${lean}.`;
  return `${sourceWords(known, player)}: ${strayWords(app, known.lineRad)}.${leaning}`;
}

/** Less than this, rad, nobody would notice. */
const NOTICED = 0.0005;
/** From so much on it is more than a touch. */
const MUCH = 0.002;

const isClear = ({ value, low, high }: KnownFigure) =>
  Math.abs(value) >= NOTICED && (low > 0 || high < 0);

/** "a touch full on cuts to the left"; empty where no lean is clear. */
export function leanWords({ straight, cutLeft, cutRight }: Leans): string {
  const fullness = (lean: KnownFigure) => (lean.value > 0 ? 'full' : 'thin');
  const [left, right] = [isClear(cutLeft), isClear(cutRight)];
  if (left && right && fullness(cutLeft) === fullness(cutRight)) {
    return `${sizeWords(cutLeft)}${fullness(cutLeft)} on cuts`;
  }
  const parts = [
    ...(left ? [`${sizeWords(cutLeft)}${fullness(cutLeft)} on cuts to the left`] : []),
    ...(right ? [`${sizeWords(cutRight)}${fullness(cutRight)} on cuts to the right`] : []),
  ];
  if (parts.length > 0) return parts.join(', ');
  if (!isClear(straight)) return '';
  return `${sizeWords(straight)}${straight.value > 0 ? 'right' : 'left'} on straight ones`;
}

function sizeWords({ value }: KnownFigure): string {
  return Math.abs(value) < MUCH ? 'a touch ' : '';
}

/** "Your", or "Their" of a student. */
function whoseWords(player: Player): string {
  return forWords(player) === 'you' ? 'Your' : 'Their';
}

/** "43 shots"; where some teach nothing, "7 shots, 6 learnt from: 1 not as meant". */
export function tallyWords({ shots, notMeant }: ShotTally): string {
  const all = shotsWords(shots);
  return notMeant === 0 ? all : `${all}, ${shots - notMeant} learnt from: ${notMeant} not as meant`;
}

const shotsWords = (count: number) => (count === 1 ? '1 shot' : `${count} shots`);

/** How somebody stands in a list: "6 of 10, 43 shots". */
export function standingWords({ madeOf10 }: Player, tally: ShotTally): string {
  const parts = [
    ...(madeOf10 === null ? [] : [`${madeOf10} of 10`]),
    ...(tally.shots === 0 ? [] : [tallyWords(tally)]),
  ];
  return parts.length === 0 ? 'nothing known yet' : parts.join(', ');
}
