import type { BedSpot } from '../../diagram/table-diamonds';
import { crossingOf } from '../../diagram/test-shot-view';
import type { LevelShot } from '../../engine/player/level-test';
import type { KnownPlayer } from '../../engine/player/player-report';
import { type LevelTest, TEST_SHOTS } from '../../state/log/level-tests';
import type { Leans } from '../../state/player/leans';
import { agoWords } from '../../units/ago-words';
import { ordinal } from '../../units/diamond-count';
import { capitalised } from '../choose/table-words';
import { leanWords, type StrayApp, strayWords } from '../player/learnt-words';
import type { ToldLine } from './ToldLines';

interface BedSize {
  readonly lengthM: number;
  readonly widthM: number;
}

/** "second diamond from the left, fourth from the break end": however the table is drawn. */
export function crossingWords(spot: BedSpot, bed: BedSize): string {
  const { across, along } = crossingOf(spot, bed);
  return `${ordinal(across)} diamond from the left, ${ordinal(along)} from the break end`;
}

/** Where cue ball and ball are to be put, each where two diamonds cross. */
export function placedLines(
  { position, goal }: Pick<LevelShot, 'position' | 'goal'>,
  bed: BedSize,
): readonly ToldLine[] {
  return [['Cue ball', 'cue'] as const, ['Ball', goal.ball] as const].flatMap(([what, name]) =>
    position.flatMap((ball) => (ball.name === name ? [[what, crossingWords(ball, bed)]] : [])),
  );
}

/** From so much on a speed is off by more than anybody would shrug at. */
const NOTICED_SHARE = 0.03;

/** What a test told, a line each: the line with its width, its lean, the speed. */
export function testLines(app: StrayApp, known: KnownPlayer, leans: Leans): readonly string[] {
  const lean = leanWords(leans);
  return [
    `${capitalised(strayWords(app, known.lineRad))}.`,
    lean === '' ? 'No lean to one side stands out.' : `Your line leans ${lean}.`,
    speedLine(known.bias.speedShare),
  ];
}

function speedLine({ value, low, high }: KnownPlayer['bias']['speedShare']): string {
  const isClear = (low > 0 || high < 0) && Math.abs(value) >= NOTICED_SHARE;
  if (!isClear) return 'Your speed is neither hard nor soft as far as these shots tell.';
  return `You hit ${Math.round(100 * Math.abs(value))} % ${value > 0 ? 'harder' : 'softer'} than meant.`;
}

/** How the level test stands: "8 of 15 played", "Last done 3 weeks ago". */
export function testStanding(tests: readonly LevelTest[], nowMs: number): string {
  const last = tests.at(-1);
  if (last && !last.isDone)
    return `${last.shots.length} of ${TEST_SHOTS} played: go on where you left.`;
  const done = tests.filter(({ isDone }) => isDone);
  const lastDone = done.at(-1);
  if (lastDone === undefined)
    return 'Fifteen shots in ten minutes tell how fine your line is, and months later whether it got finer.';
  const times = done.length === 1 ? 'once' : `${done.length} times`;
  return `Done ${times}, last ${agoWords(nowMs - lastDone.begunAtMs)}.`;
}
