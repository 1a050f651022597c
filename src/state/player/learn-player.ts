import { DEFAULT_KIT } from '../../engine/kit/kit';
import { type KitSpread, UNMEASURED } from '../../engine/kit/kit-spread';
import type { KnownPlayer, PlayerJob, PlayerReport } from '../../engine/player/player-report';
import type { PlayedShot } from '../../store/player';
import type { PlayerQuestion } from './player-question';

/** Works out what became of a player's shots, beside the page. */
export type ReportPlayer = (job: PlayerJob) => Promise<PlayerReport>;

/**
 * Learns players. What a shot says of its line is remembered while the page is open, for it costs a
 * hundred times what the rest does.
 */
export function createLearnPlayer(report: ReportPlayer) {
  const lines = new WeakMap<PlayedShot, PlayerReport['lines'][number]>();
  let asked: PlayerReport['question'] = null;
  return async ({ madeOf10, shots }: PlayerQuestion): Promise<KnownPlayer> => {
    const job: PlayerJob = {
      madeOf10,
      // The question is about no kit in particular.
      kit: DEFAULT_KIT,
      spread: UNMEASURED,
      question: asked,
      shots: shots.map((played) => {
        const { shot, target, kit, spread, aimRad, result } = played;
        const line = lines.get(played);
        const plain = { shot, target, kit, spread, aimRad, result, counts: true };
        return line === undefined ? plain : { ...plain, line };
      }),
    };
    const told = await report(job);
    for (const [index, shot] of shots.entries()) lines.set(shot, told.lines[index] ?? null);
    asked = told.question;
    if (told.known === null) throw new Error('The usual kit has no aim for the question’s shot.');
    return told.known;
  };
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
