import type { PlayedGoal } from '../goal/goal';
import { type BaseStroke, STROKES } from './base-strokes';
import { type Bracket, bracketsIn } from './brackets';
import { directWays } from './direct-ways';
import { type FoundWay, foundBy } from './found-way';
import type { LegFilter, Sample } from './sample';
import { scanAcross, scanAround, strokeAt } from './scan';
import { solveHeading } from './solve-heading';
import type { Failed, StretchFound, WhyNoWay } from './stretch-found';
import type { WaysStretch } from './stretches';
import { askedFor, type WaysAsked, type WaysQuestion } from './ways-question';

/** Does one part of the search. */
export function searchStretch(question: WaysQuestion, stretch: WaysStretch): StretchFound {
  const asked = askedFor(question);
  if (stretch.search === 'direct') {
    return directWays(question, stretch.ball, stretch.pocket);
  }
  const base = STROKES[stretch.stroke];
  if (base === undefined) return { ways: [], failed: [] };
  const isKick = stretch.search === 'kick';
  const filter: LegFilter = isKick
    ? { kinds: ['kick'], first: null }
    : { kinds: stretch.kinds, first: stretch.ball };
  const samples = isKick
    ? scanAround(asked, base, filter)
    : scanAcross(asked, stretch.ball, base, filter);
  return solved(asked, base, samples);
}

function solved(asked: WaysAsked, base: BaseStroke, samples: readonly Sample[]): StretchFound {
  const ways: FoundWay[] = [];
  const failed = new Map<string, Failed>();
  for (const bracket of bracketsIn(asked, samples)) {
    const way = wayIn(asked, base, bracket);
    if (typeof way === 'object') {
      ways.push(way);
      continue;
    }
    const { kind } = bracket.leg;
    const times = 1 + (failed.get(`${kind} ${way}`)?.times ?? 0);
    failed.set(`${kind} ${way}`, { kind, why: way, times });
  }
  return { ways, failed: [...failed.values()] };
}

function wayIn(asked: WaysAsked, base: BaseStroke, bracket: Bracket): FoundWay | WhyNoWay {
  const { kind, ball, via } = bracket.leg;
  const goal: PlayedGoal = { kind, ball, pocket: bracket.pocket.name, via };
  const solved = solveHeading(asked, base, goal, bracket);
  if ('lost' in solved) return solved.lost;
  const { headingRad, missPerRad } = solved;
  return foundBy(asked, goal, strokeAt(asked, base, headingRad), missPerRad);
}
