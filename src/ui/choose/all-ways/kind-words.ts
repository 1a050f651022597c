import type { Goal, SafetyGoal, Step, WayKind } from '../../../engine/goal/goal';
import type { LegalRule } from '../../../engine/goal/legal';
import type { ToldWay } from '../../../engine/ways/refine-found';
import type { Play } from '../../../engine/worth/worthy-ways';
import type { WayFilter } from '../../../state/choose/all-ways/all-ways';
import type { SavedPosition } from '../../../store/saved-position';
import { degreesOf } from '../../../units/angle-degrees';
import { ballWords, capitalised, pocketWords } from '../table-words';

/** What can be listed, as on the buttons. */
export const FILTERS: readonly (readonly [WayFilter, string])[] = [
  ['all', 'All'],
  ['direct', 'Cuts'],
  ['bank', 'Banks'],
  ['kick', 'Kicks'],
  ['combination', 'Combos'],
  ['carom', 'Caroms'],
  ['safety', 'Safety'],
];

/** What is listed, as one says of so many: "12 ways", "1 bank". */
export function countWords(count: number, filter: WayFilter, more = ''): string {
  const one = filter === 'all' ? 'way' : filter === 'direct' ? 'cut' : filter;
  return `${count}${more} ${count === 1 ? one : `${one}s`.replace('tys', 'ties')}`;
}

/** What falls where: "The 3 into the far right pocket". */
export function fallWords({ ball, pocket }: Pick<Goal, 'ball' | 'pocket'>): string {
  return `The ${ball} into the ${pocketWords(pocket)} pocket`;
}

/** What of a way says how its ball gets there. */
type Going = Pick<Goal, 'kind' | 'ball' | 'via'>;

/** A cut thinner than this is one to a player, rad: 3 degrees (our judgement). */
const CUT_RAD = 0.052;

/**
 * How it gets there: "bank off the left rail", "combination, the 3 off the 5", "cut 45°".
 * @param cutRad of a direct cut; left out: not known
 */
export function kindWords(goal: Going, doubleKiss: boolean, cutRad?: number): string {
  if (goal.kind === 'direct' && cutRad !== undefined) {
    const cut = Math.abs(cutRad);
    return cut < CUT_RAD ? 'straight in' : `cut ${degreesOf(cut).toFixed(0)}°`;
  }
  return `${KINDS[goal.kind](goal)}${doubleKiss ? ', the cue ball meeting it twice' : ''}`;
}

/** The same of a way that was worked out. */
export function wayKind({ goal, doubleKiss, shot }: Pick<ToldWay, 'goal' | 'doubleKiss' | 'shot'>) {
  return kindWords(goal, doubleKiss, shot?.cutRad);
}

/** What the cue ball does: "off the far rail to the 3". */
export function safetyWords({ via }: Pick<SafetyGoal, 'via'>): string {
  const isStraight = via.every((step) => 'ball' in step);
  return `${isStraight ? 'straight' : `off ${railsWords(via)}`} to ${firstBall(via)}`;
}

/** What a way does, at its head: "The 3 into the far right pocket, cut 45°". */
export function playWords(told: Play): string {
  if ('struck' in told) return `Safety, ${safetyWords(told.goal)}`;
  return `${fallWords(told.goal)}, ${wayKind(told)}`;
}

type Told = Pick<Goal, 'ball' | 'via'>;

const KINDS: Readonly<Record<WayKind, (goal: Told) => string>> = {
  direct: () => 'direct',
  bank: ({ via }) => `bank off ${railsWords(via)}`,
  kick: ({ via }) => `kick off ${railsWords(via)}`,
  combination: ({ ball, via }) => `combination, the ${ball} off ${firstBall(via)}`,
  carom: ({ ball, via }) => {
    const kissed = via.find((step) => 'ball' in step && step.by === ball);
    return kissed && 'ball' in kissed
      ? `carom, the ${ball} off ${ballWords(kissed.ball)}`
      : `carom, cue ball off ${firstBall(via)}`;
  },
};

/** The ball that the cue ball meets first. */
function firstBall(via: readonly Step[]): string {
  const struck = via.find((step) => 'ball' in step);
  return struck && 'ball' in struck ? ballWords(struck.ball) : 'a ball';
}

/** "the left rail", "the left, then the far rail". */
function railsWords(via: readonly Step[]): string {
  const rails = via.flatMap((step) => ('cushion' in step ? [`the ${step.cushion}`] : []));
  return `${rails.join(', then ')} rail`;
}

/** What is looked for: "Any ball into any pocket; the lowest hit first". */
export function wantedWords({
  goal: { ball, pocket },
  legal = 'any',
}: Pick<SavedPosition, 'goal' | 'legal'>): string {
  const what = ball === null ? 'any ball' : ballWords(ball);
  const where = pocket === null ? 'any pocket' : `the ${pocketWords(pocket)} pocket`;
  const first = firstWords(legal);
  return `${capitalised(what)} into ${where}${first === '' ? '' : `; ${first} hit first`}`;
}

function firstWords(legal: LegalRule): string {
  switch (legal) {
    case 'any':
      return '';
    case 'lowest':
      return 'the lowest';
    case 'low':
      return 'a low one, 1 to 7,';
    case 'high':
      return 'a high one, 9 to 15,';
    default:
      return legal.length === 0 ? 'nothing' : `the ${legal.join(' or the ')}`;
  }
}
