import type { KitPrior } from '../../engine/fit/fit-question';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { KIT_QUANTITIES } from '../../engine/kit/kit-spread';
import { isSame } from '../../store/same-value';
import type { MeasureQuestion } from './measure-question';
import { kitPriorOf, OWN_PRIORS } from './part-prior';
import type { Played } from './parts-played';
import type { WorkedReport } from './work-report';

/** What is known of a kit: before anything was read on it, and now. */
export interface KnownOfKit {
  readonly before: KitKnowledge;
  readonly now: KitKnowledge;
}

/** The same of the kit that a question was about. */
export interface Told extends KnownOfKit {
  readonly question: MeasureQuestion;
}

const NO_TIES = KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j)));

/** What a report tells. */
export function toldBy({ question, prior, report }: WorkedReport): Told {
  const before = unread(prior);
  // Where nothing was read the report knows what was known before, but for rounding.
  const isRead = report.shots.length > 0;
  return { question, before, now: isRead ? report.knowledge : before };
}

/**
 * What was told of the kit in play, as long as it was of that kit. Sizes, which nothing here
 * measures, are always those of the records.
 */
export function knownOfKit(inPlay: Played, told: Told | null): KnownOfKit {
  const own = kitPriorOf(inPlay, OWN_PRIORS);
  if (told === null || !isOfKit(told.question, inPlay)) {
    const before = unread(own);
    return { before, now: before };
  }
  const { ballRadiusM, tipRadiusM } = own.kit;
  const sized = (known: KitKnowledge): KitKnowledge => ({
    ...known,
    kit: { ...known.kit, ballRadiusM, tipRadiusM },
  });
  return { before: sized(told.before), now: sized(told.now) };
}

/** Whether a question was about the kit in play: the same parts, with the same numbers. */
export function isOfKit(question: MeasureQuestion, inPlay: Played): boolean {
  return isSame(measurableOf(question.inPlay), measurableOf(inPlay));
}

/** The kit by its parts and the numbers that can be measured of it. */
function measurableOf(played: Played) {
  const { kit } = kitPriorOf(played, OWN_PRIORS);
  const { tipRadiusM: _tip, ballRadiusM: _ball, ...numbers } = kit;
  return [played.parts, numbers];
}

function unread({ kit, spread }: KitPrior): KitKnowledge {
  return { kit, spread, correlation: NO_TIES };
}
