import type { NamedBall } from '../../../engine/lie/position';
import type { Outcome } from '../../../engine/table/table-play';
import type { TableShape } from '../../../engine/table/table-shape';
import type { ShownSafety } from '../../../state/choose/all-ways/shown-way';
import { cueBallFirst, stopWords } from '../fan-words';
import { ballWords, capitalised } from '../table-words';

/** What the lines of a safety are about. */
export const STOPS_LEAD = 'Where both balls stop when all is as meant, in diamonds';

/** What dots and rings of a safety's drawing are. */
export function safetySpreadLine({ told: { struck } }: ShownSafety): string {
  return `Dots: where the cue ball rests in single strokes; crosses: ${ballWords(struck.ball)}. A ring, where drawn, holds about two in three.`;
}

interface Stop {
  readonly ball: string;
  readonly outcome: Outcome;
}

/** The cue ball first; empty where the stroke cannot be played. */
function stopsOf({ told, fan }: ShownSafety, balls: readonly NamedBall[]): readonly Stop[] {
  const names = cueBallFirst(balls).map(({ name }) => name);
  return (['cue', told.struck.ball] as const).flatMap((name) => {
    const outcome = fan[0]?.play.balls[names.indexOf(name)]?.outcome;
    return outcome ? [{ ball: ballWords(name), outcome }] : [];
  });
}

/** "The cue ball: 2.0 along, 1.5 from the left". */
export function stopLines(
  way: ShownSafety,
  balls: readonly NamedBall[],
  shape: TableShape,
): readonly string[] {
  return stopsOf(way, balls).map(
    ({ ball, outcome }) => `${capitalised(ball)}: ${stopWords(outcome, shape)}`,
  );
}

/** About where both balls stop: "the cue ball stops far left, the 3 near right". */
export function roughStops(
  way: ShownSafety,
  balls: readonly NamedBall[],
  shape: TableShape,
): string {
  return stopsOf(way, balls)
    .map(
      ({ ball, outcome }, at) => `${ball}${at === 0 ? ' stops' : ''} ${areaWords(outcome, shape)}`,
    )
    .join(', ');
}

/** A third of the table each way: "far left", "in the middle". */
function areaWords(outcome: Outcome, shape: TableShape): string {
  if (outcome.kind === 'pocketed' || outcome.kind === 'off-table') return 'is lost';
  const up = third(outcome.yM / shape.lengthM, 'near', 'far');
  const across = third(outcome.xM / shape.widthM, 'left', 'right');
  if (up === '' && across === '') return 'in the middle';
  if (across === '') return `${up} centre`;
  return `${up || 'middle'} ${across}`;
}

/** @param share of the whole, 0 in the middle */
function third(share: number, low: string, high: string): string {
  if (Math.abs(share) < 1 / 6) return '';
  return share < 0 ? low : high;
}
