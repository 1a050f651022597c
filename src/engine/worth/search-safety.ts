import { railOf } from '../goal/chains';
import type { SafetyGoal, Step } from '../goal/goal';
import { playLaid } from '../goal/laid-table';
import { atUsualPace } from '../room/drawn-stroke';
import type { TablePlay } from '../table/table-play';
import type { BaseStroke } from '../ways/base-strokes';
import { drawnOnTable } from '../ways/drawn-chance';
import { playedWayOf } from '../ways/played-way';
import { headingsAcross, headingsAround, strokeAt } from '../ways/scan';
import { askedFor, type WaysAsked, type WaysQuestion } from '../ways/ways-question';
import type { FoundSafety } from './safety';
import { StrokeJudge } from './stroke-worth';
import { mean } from './worth-parts';

/** A part of the search for safeties: all that one stroke does across a ball, or all around. */
export type SafetyStretch =
  | { readonly search: 'safety'; readonly ball: number; readonly stroke: number }
  | { readonly search: 'safety-kick'; readonly stroke: number };

/** From a touch to firm (common practice, no source): what is to stop somewhere is played softly. */
const SPEEDS_MPS = [0.6, 1, 1.6, 2.4] as const;
/** In the middle, high and low, as fractions of R. */
const HEIGHTS = [0, 0.35, -0.35] as const;

const STROKES: readonly BaseStroke[] = SPEEDS_MPS.flatMap((speedMps) =>
  HEIGHTS.map((height) => ({ side: 0, height, speedMps })),
);
/** By cushions: medium and firm. */
const KICKS: readonly BaseStroke[] = [1.4, 2.4].map((speedMps) => ({
  side: 0,
  height: 0,
  speedMps,
}));

/** The search in parts; all put together are the search, by however many hands they were done. */
export function safetyStretches(question: WaysQuestion): readonly SafetyStretch[] {
  const { first } = askedFor(question);
  if (first.length === 0) return [];
  return [
    ...STROKES.flatMap((_, stroke) =>
      first.map((ball) => ({ search: 'safety', ball, stroke }) as const),
    ),
    ...KICKS.map((_, stroke) => ({ search: 'safety-kick', stroke }) as const),
  ];
}

/** Of a part so many are worth a second look, of so many drawn strokes. */
const MOST_OF_A_PART = 2;
const FEW_DRAWS = 24;

/** Does one part of the search: the hits that leave the least. */
export function searchSafety(
  question: WaysQuestion,
  stretch: SafetyStretch,
): readonly FoundSafety[] {
  const asked = askedFor(question);
  const isKick = stretch.search === 'safety-kick';
  const base = (isKick ? KICKS : STROKES)[stretch.stroke];
  if (base === undefined) return [];
  const headings = isKick ? headingsAround() : headingsAcross(asked, stretch.ball, base);
  const judge = new StrokeJudge(question);
  const looks = headings.map((headingRad) => lookAt(asked, judge, base, headingRad));
  return looks
    .map((look, at) => ({
      look,
      value: smoothed(looks, at, 'value'),
      leaves: smoothed(looks, at, 'leaves'),
    }))
    .filter(({ look }) => look.goal !== null && look.goal.via.length > 1 === isKick)
    .sort(
      (a, b) => b.value - a.value || a.leaves - b.leaves || a.look.headingRad - b.look.headingRad,
    )
    .slice(0, MOST_OF_A_PART)
    .flatMap(({ look }) => foundAt(asked, judge, base, look) ?? []);
}

/** A stroke as meant, and what it is worth. */
interface Look {
  readonly headingRad: number;
  /** Null where it is no legal hit that passes the turn. */
  readonly goal: SafetyGoal | null;
  readonly value: number;
  /** How easy the other player's best shot is. */
  readonly leaves: number;
}

function lookAt(asked: WaysAsked, judge: StrokeJudge, base: BaseStroke, headingRad: number): Look {
  const { question, laid } = asked;
  const stroke = atUsualPace(strokeAt(asked, base, headingRad), question.profile);
  const play = playLaid(laid, stroke, question.kit, { endsOnly: true });
  const { value, theirs } = judge.judge(play);
  const isSafety = play !== null && theirs !== null && !theirs.isFoul;
  const leaves = theirs?.best ?? 0;
  return { headingRad, value, leaves, goal: isSafety ? goalOf(play, asked) : null };
}

/** A player who means one look may play the next. */
function smoothed(looks: readonly Look[], at: number, of: 'value' | 'leaves'): number {
  const value = (place: number) => looks[place]?.[of] ?? 0;
  return (value(at - 1) + 2 * value(at) + value(at + 1)) / 4;
}

/** What the cue ball does until it meets a ball; null where it meets none. */
function goalOf({ events }: TablePlay, { laid }: WaysAsked): SafetyGoal | null {
  const via: Step[] = [];
  for (const event of events) {
    if (event.ball !== 0) continue;
    if (event.kind === 'hits-cushion' && event.part === 'nose') {
      via.push({ cushion: railOf(event.cushion), by: 'cue' });
    }
    if (event.kind !== 'hits-ball') continue;
    const ball = laid.names[event.other];
    if (typeof ball !== 'number') return null;
    return { kind: 'safety', ball: null, pocket: null, via: [...via, { ball, by: 'cue' }] };
  }
  return null;
}

function foundAt(
  asked: WaysAsked,
  judge: StrokeJudge,
  base: BaseStroke,
  { goal, headingRad }: Look,
): FoundSafety | null {
  const { question, laid } = asked;
  const overTable = strokeAt(asked, base, headingRad);
  const play = playLaid(laid, overTable, question.kit);
  if (goal === null || play === null) return null;
  const stroke = { ...overTable, aimRad: 0 };
  const meant = { headingRad: overTable.aimRad, stroke };
  const plays = drawnOnTable(question, meant, 0, FEW_DRAWS);
  const judged = plays.map((drawn) => judge.judge(drawn));
  const rough = mean(judged.map(({ value }) => value));
  const leaves = mean(judged.map(({ theirs }) => theirs?.best ?? 0));
  return { goal, ...meant, way: playedWayOf(asked, overTable, play), rough, leaves };
}
