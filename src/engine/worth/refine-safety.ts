import { playLaid } from '../goal/laid-table';
import type { FanPlay } from '../plan/ranked-way';
import { type Rest, spreadOf } from '../plan/rest-spread';
import { atUsualPace } from '../room/drawn-stroke';
import type { TablePlay } from '../table/table-play';
import { DRAWS, drawnOnTable, overTable } from '../ways/drawn-chance';
import { askedFor, type WaysQuestion } from '../ways/ways-question';
import { type FoundSafety, struckBy, type ToldSafety } from './safety';
import { worthFrom } from './worth';

/** So many safeties of a position are told. */
const MOST_SAFETIES = 3;

/** Of safeties found, in whatever order, those worth working out; no two that players would call the same. */
export function safetiesToRefine(
  found: readonly FoundSafety[],
  most = MOST_SAFETIES,
): readonly FoundSafety[] {
  const best = new Map<string, FoundSafety>();
  for (const one of [...found].sort(byRough)) {
    const key = nameOf(one);
    if (!best.has(key)) best.set(key, one);
  }
  return [...best.values()].slice(0, most);
}

/** Works a safety out in full. */
export function refineSafety(
  question: WaysQuestion,
  { goal, headingRad, stroke, way }: FoundSafety,
  draws = DRAWS,
): ToldSafety {
  const all = drawnOnTable(question, { headingRad, stroke }, 0, draws);
  const { names } = askedFor(question).laid;
  const ball = struckBy(goal);
  return {
    goal,
    headingRad,
    stroke,
    way,
    worth: worthFrom(question, { goal, headingRad, stroke }, all),
    rest: spreadOf(restsOf(all, 0), null),
    struck: { ball, rest: spreadOf(restsOf(all, names.indexOf(ball)), null) },
  };
}

/** A safety as it plays out when all is as meant, at the player's usual pace; empty where the tip slips. */
export function fanOfSafety(question: WaysQuestion, told: ToldSafety): readonly FanPlay[] {
  const stroke = atUsualPace(overTable(told), question.profile);
  const play = playLaid(askedFor(question).laid, stroke, question.kit);
  return play === null ? [] : [{ hit: 'true', aimRad: 0, play }];
}

/** Where a ball rests, of the plays that leave it on the table. */
function restsOf(all: readonly (TablePlay | null)[], number: number): readonly Rest[] {
  return all.flatMap((play) => {
    const outcome = play?.balls[number]?.outcome;
    if (outcome?.kind !== 'rests' && outcome?.kind !== 'hangs') return [];
    return [{ at: { x: outcome.xM, y: outcome.yM }, weight: 1 }];
  });
}

/** What happens, and how players would call the stroke. */
function nameOf({ goal, way }: FoundSafety): string {
  const steps = goal.via.map((step) => ('ball' in step ? step.ball : step.cushion));
  return `${steps.join(' ')} ${way.side} ${way.arrival} ${way.speed}`;
}

function byRough(one: FoundSafety, other: FoundSafety): number {
  const [a, b] = [one, other].map((safety) => `${nameOf(safety)} ${safety.headingRad.toFixed(9)}`);
  return other.rough - one.rough || one.leaves - other.leaves || ((a ?? '') < (b ?? '') ? -1 : 1);
}
