import type { Theme } from '../../engine/player/drill-shot';
import type { Stopped } from '../../engine/player/known-player';
import type { Limit, Limits } from '../../engine/player/limits';
import type { DrillTally } from '../../state/log/kept-drills';
import type { Ladder } from '../../state/log/ladders';
import type { PracticeModel } from '../../state/log/practice-model';
import type { Player } from '../../store/player';
import { agoWords } from '../../units/ago-words';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { formatNumber } from '../../units/format-number';
import { forWords } from '../player/player-words';

/** What is practised, and how. */
export const THEME_WORDS: Readonly<Record<Theme, readonly [name: string, how: string]>> = {
  line: ['Line', 'Straight balls and cuts, struck in the centre.'],
  speed: ['Speed', 'Straight balls, after which the cue ball is to stop on a spot.'],
  side: ['Side', 'Cuts with left or right side, so that the cue’s squirt counts.'],
};

/** What is to be practised where this limits most. */
export const THEME_OF: Readonly<Record<Limit, Theme>> = {
  line: 'line',
  speed: 'speed',
  kit: 'side',
};

/** How a ladder goes on. */
export const LADDER_RULE =
  'Five tries a shot. All five made: the next is harder. Three missed: easier.';

export const isTheme = (id: string): id is Theme => Object.hasOwn(THEME_WORDS, id);

export const LIMIT_WORDS: Readonly<Record<Limit, string>> = {
  line: 'line',
  speed: 'speed',
  kit: 'knowing the kit',
};

/** What limits most first. */
export function limitsInOrder({ gains }: Limits): readonly Limit[] {
  const all: Limit[] = ['line', 'speed', 'kit'];
  return all.sort((one, other) => gains[other] - gains[one]);
}

/** Shots of ten: "1.4". */
export function ofTenWords(gain: number): string {
  return Math.max(0, 10 * gain).toFixed(1);
}

/** "Your line limits you most: half as far off, it would bring 1.4 more of ten shots you played; …" */
export function limitsLine(limits: Limits, player: Player): string {
  const { gains, isOwn } = limits;
  const isYou = forWords(player) === 'you';
  const [first = 'line', ...others] = limitsInOrder(limits);
  const shots = isOwn ? `ten shots ${isYou ? 'you' : 'they'} played` : 'ten ordinary shots';
  const what =
    first === 'kit' ? 'What is not known of the kit' : `${isYou ? 'Your' : 'Their'} ${first}`;
  const rest = others.map((one) => `${LIMIT_WORDS[one]} ${ofTenWords(gains[one])}`);
  return (
    `${what} limits ${isYou ? 'you' : 'them'} most: half as far off, it would bring ` +
    `${ofTenWords(gains[first])} more of ${shots}; ${rest.join(', ')}.`
  );
}

/** How somebody stands on a ladder: "12 of 17 made, two steps harder than at first". */
export function ladderWords({ tries, made, level }: Ladder): string {
  if (tries.length === 0) return '';
  return `${made} of ${tries.length} made, ${stepsWords(level)}.`;
}

function stepsWords(level: number): string {
  if (level === 0) return 'as hard as at first';
  const steps = Math.abs(level) === 1 ? '1 step' : `${Math.abs(level)} steps`;
  return `${steps} ${level > 0 ? 'harder' : 'easier'} than at first`;
}

/** How practice stands, in the log: "17 tries on ladders, last today. 1 way kept, 3 tries." */
export function practiceStanding(
  { ladders, kept }: Pick<PracticeModel, 'ladders' | 'kept'>,
  nowMs: number,
): string {
  const tries = Object.values(ladders.value).flatMap((ladder) => ladder.tries);
  const ways = kept.all.value;
  const again = ways.reduce((sum, way) => sum + kept.tally(way).tries, 0);
  const count = ways.length === 1 ? '1 way' : `${ways.length} ways`;
  const drills = ways.length === 0 ? '' : ` ${count} kept, ${triesWords(again)}.`;
  if (tries.length === 0) return `What limits you most, and shots for it.${drills}`;
  const last = Math.max(...tries.map(({ atMs }) => atMs));
  return `${triesWords(tries.length)} on ladders, last ${agoWords(nowMs - last)}.${drills}`;
}

const triesWords = (count: number) => (count === 1 ? '1 try' : `${count} tries`);

/** What a set came to, and what comes of it: "4 of 5 made: the next is as hard". */
export function setWords(made: number, tries: number, step: Ladder['lastStep']): string {
  const next = step === 0 ? 'as hard' : step > 0 ? 'harder' : 'easier';
  return `${made} of ${tries} made: the next is ${next}.`;
}

/** How much room a shot leaves: "±0.31°", "±8 %". */
export function roomWords(theme: Theme, room: number): string {
  if (theme === 'speed') return `±${Math.max(1, Math.round(100 * room))}\u00a0%`;
  const figures = { ...DEGREES, decimals: 2, leastDecimals: 2 };
  return `±${formatNumber(degreesOf(room), figures)}°`;
}

/** On the buttons of a ball that went. */
export const STOP_BUTTONS: readonly (readonly [Stopped, string])[] = [
  ['in', 'On the spot'],
  ['short', 'Short of it'],
  ['long', 'Past it'],
];

/** How far from its middle the cue ball may stop, in balls: "¾ ball", "1½ balls". */
export function reachWords(balls: number): string {
  const told = formatNumber(balls, { decimals: 0, leastDecimals: 0, eighths: true });
  return balls > 1.01 ? `${told} balls` : `${told} ball`;
}

/** How often a kept way was made: "3 of 7 made". */
export function tallyWords({ tries, made }: DrillTally): string {
  return tries === 0 ? 'not tried yet' : `${made} of ${tries} made`;
}
