import type { PocketChance, WhyNot } from '../../engine/plan/pocket-chances';
import type { PocketName } from '../../engine/table/pocket-shape';
import type { ChooseModel } from '../../state/choose/choose-model';
import { easeWords, type Telling } from '../chance-telling';

/** A chance as players say it: "6 in 10"; where no figure is told, "fair". */
export function tenthsWords(share: number, telling: Telling): string {
  if (telling === 'ease') return easeWords(share);
  const tenths = Math.round(10 * share);
  if (tenths === 0) return 'rarely';
  return tenths === 10 ? 'nearly all' : `${tenths} in 10`;
}

/** What is told of a pocket; the ball to be played may go into it, or not. */
export interface PocketTold {
  readonly words: string;
  readonly isClosed: boolean;
}

/** Null while nothing is known of the pocket. What is closed to all is known at once. */
export function pocketTold(
  { closed, chances }: Pick<ChooseModel, 'closed' | 'chances'>,
  name: PocketName,
  telling: Telling,
): PocketTold | null {
  const why = closed.value.get(name);
  if (why) return { words: whyWords({ reason: why }), isClosed: true };
  const chance = chances.value?.get(name);
  return chance ? chanceTold(chance, telling) : null;
}

function chanceTold(chance: PocketChance, telling: Telling): PocketTold {
  return chance.share === null
    ? { words: whyWords(chance.why), isClosed: true }
    : { words: tenthsWords(chance.share, telling), isClosed: false };
}

function whyWords(why: WhyNot): string {
  switch (why.reason) {
    case 'too-thin':
      return 'too thin';
    case 'pocket-closed':
      return 'no way in';
    case 'not-reached':
      return 'falls short';
    case 'in-the-way':
      return why.what === undefined || why.what === 'jaw'
        ? 'blocked'
        : `${why.what === 'cue' ? 'cue ball' : why.what} in the way`;
  }
}
