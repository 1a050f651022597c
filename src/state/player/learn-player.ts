import { DEFAULT_KIT } from '../../engine/kit/kit';
import { type KitSpread, UNMEASURED } from '../../engine/kit/kit-spread';
import type { KnownPlayer, PlayerJob, PlayerReport } from '../../engine/player/player-report';
import type { PlayedShot } from '../../store/player';
import type { PlayerQuestion } from './player-question';

/** Works out what became of a player's shots, beside the page. */
export type ReportPlayer = (job: PlayerJob) => Promise<PlayerReport>;

/** Learns players beside the page. */
export interface LearnPlayer {
  /** All that there is to know; rejected where it cannot be worked out. */
  learn(of: LearntFrom): Promise<KnownPlayer>;
  /** The place of the shot of several that would tell most of the player; null of none. */
  mostTelling(of: LearntFrom, candidates: Candidates): Promise<number | null>;
}

type LearntFrom = Pick<PlayerQuestion, 'madeOf10' | 'shots'>;
type Candidates = NonNullable<PlayerJob['candidates']>;

/**
 * What a shot says of its line is remembered while the page is open, for it costs a hundred times what
 * the rest does. It hangs on what was asked, and not on what became of it.
 */
export function createLearnPlayer(report: ReportPlayer): LearnPlayer {
  const lines = new WeakMap<PlayedShot['shot'], PlayerReport['lines'][number]>();
  let asked: PlayerReport['question'] = null;
  const ask = async ({ madeOf10, shots }: LearntFrom, candidates?: Candidates) => {
    const job: PlayerJob = {
      madeOf10,
      // The question is about no kit in particular.
      kit: DEFAULT_KIT,
      spread: UNMEASURED,
      question: asked,
      shots: shots.map((played) => {
        const { shot, target, kit, spread, aimRad, result } = played;
        const line = lines.get(shot);
        const rest = seenRest(played);
        const plain = { shot, target, kit, spread, aimRad, result, counts: true, ...rest };
        return line === undefined ? plain : { ...plain, line };
      }),
      ...(candidates && { candidates }),
    };
    const told = await report(job);
    for (const [index, { shot }] of shots.entries()) lines.set(shot, told.lines[index] ?? null);
    asked = told.question;
    return told;
  };
  return {
    async learn(of) {
      const { known } = await ask(of);
      if (known === null) throw new Error('The usual kit has no aim for the question’s shot.');
      return known;
    },
    mostTelling: async (of, candidates) => (await ask(of, candidates)).next,
  };
}

/** Where the cue ball of a drill was to stop, and did. */
function seenRest({ drill }: PlayedShot): Pick<PlayerJob['shots'][number], 'rest'> {
  const { rest, stopped } = drill?.rung ?? {};
  return rest && stopped ? { rest: { ...rest, stopped } } : {};
}

/**
 * What of a kit's unknowns counts as chance for somebody who is learnt: what is the same shot after
 * shot is among their steady errors by now.
 */
export function chanceSpread(known: KnownPlayer | null, spread: KitSpread): KitSpread {
  if (known === null) return spread;
  const left = Object.entries(spread).map(([name, sd]) => {
    const quantity = name as keyof KitSpread;
    return [quantity, (sd * known.spread[quantity]) / UNMEASURED[quantity]];
  });
  return Object.fromEntries(left) as KitSpread;
}
