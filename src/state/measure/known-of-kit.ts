import type { KitPrior } from '../../engine/fit/fit-question';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { KIT_QUANTITIES } from '../../engine/room/kit-spread';
import { kitKeyOf } from './measure-question';
import { kitPriorOf, OWN_PRIORS } from './part-prior';
import type { Played } from './parts-played';
import type { WorkedReport } from './work-report';

/** What is known of the kit in play: before anything was read on it, and now. */
export interface KnownOfKit {
  readonly before: KitKnowledge;
  readonly now: KitKnowledge;
  /** Whether a report tells of it. */
  readonly isReported: boolean;
}

const NO_TIES = KIT_QUANTITIES.map((_, i) => KIT_QUANTITIES.map((_, j) => Number(i === j)));

/**
 * What a report tells of the kit in play, as long as it is that kit's. Sizes, which nothing here
 * measures, are always those of the records.
 */
export function knownOfKit(inPlay: Played, worked: WorkedReport | null): KnownOfKit {
  const own = kitPriorOf(inPlay, OWN_PRIORS);
  if (worked === null || worked.question.kitKey !== kitKeyOf(inPlay)) {
    const before = unread(own);
    return { before, now: before, isReported: false };
  }
  const { ballRadiusM, tipRadiusM } = own.kit;
  const sized = (known: KitKnowledge): KitKnowledge => ({
    ...known,
    kit: { ...known.kit, ballRadiusM, tipRadiusM },
  });
  const before = sized(unread(worked.prior));
  // Where nothing was read the report knows what was known before, but for rounding.
  const isRead = worked.report.shots.length > 0;
  return { before, now: isRead ? sized(worked.report.knowledge) : before, isReported: true };
}

function unread({ kit, spread }: KitPrior): KitKnowledge {
  return { kit, spread, correlation: NO_TIES };
}
