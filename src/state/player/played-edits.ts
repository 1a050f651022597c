import { batch, type ReadonlySignal } from '@preact/signals';
import { MODEL_VERSION } from '../../engine/fit/model-version';
import { firstPlayer } from '../../store/parse-player';
import type { PlayedShot, Player } from '../../store/player';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import { crowded } from '../crowded';
import { type CopyResult, type EditResult, NOT_THERE } from '../edit-result';
import type { KeptRows } from '../kept-rows';

/** What a person says became of a shot: all of it can be changed later. */
export type WhatBecame = Pick<PlayedShot, 'result' | 'scratched' | 'cueBall' | 'asMeant'>;

/** A shot to log, as it was asked and what became of it. */
export type ToLog = Omit<PlayedShot, 'id' | 'playerId' | 'atMs' | 'modelVersion'>;

/** Every way to change what whoever plays has played. */
export interface PlayedEdits {
  /** Logs a shot of whoever plays, played just now; says its id. */
  log(shot: ToLog): CopyResult;
  /** Says otherwise what became of a shot. */
  correct(shotId: string, became: Partial<WhatBecame>): EditResult;
  /** Whether a shot was struck as meant: one that was not is kept, and nothing is learnt from it. */
  strikeOut(shotId: string, isStruckOut: boolean): EditResult;
  /** Takes a shot off the log, as if it had never been entered. */
  removeShot(shotId: string): EditResult;
  /** The same of one just logged: it is not there to be put back. */
  takeBack(shotId: string): EditResult;
  /** Puts the last shot removed back, until another is logged, or {@link forgetRemoved}. */
  restoreShot(): EditResult;
  forgetRemoved(): void;
}

export interface PlayedEditsPorts {
  readonly players: KeptRows<Player>;
  readonly played: KeptRows<PlayedShot>;
  readonly inPlay: ReadonlySignal<Player>;
  readonly now: () => number;
  readonly newId: () => string;
}

const OK = { ok: true } as const;
const NOTHING_REMOVED = { ok: false, problem: PLAYER_PROBLEMS.nothingRemoved } as const;

/** Every change is kept at once. */
export function createPlayedEdits(ports: PlayedEditsPorts): PlayedEdits {
  const { players, played, inPlay, now, newId } = ports;
  const onOne = (id: string, edit: (shot: PlayedShot) => void): EditResult => {
    const shot = played.find(id);
    if (shot === null) return NOT_THERE;
    edit(shot);
    return OK;
  };
  /** Two tabs may have deleted the last two: a shot is never anybody's who is not there. */
  const kept = (player: Player): Player => {
    if (players.all.peek().some(({ id }) => id === player.id)) return player;
    const back = player.id === '' ? firstPlayer() : player;
    players.put(back);
    return back;
  };
  return {
    log(shot) {
      const problem = crowded(played.all.peek());
      if (problem !== null) return { ok: false, problem };
      const id = newId();
      batch(() => {
        const { id: playerId } = kept(inPlay.peek());
        played.forgetRemoved();
        played.put({ ...shot, id, playerId, atMs: now(), modelVersion: MODEL_VERSION });
      });
      return { ok: true, id };
    },
    correct: (id, became) => onOne(id, (shot) => played.put({ ...shot, ...became })),
    strikeOut: (id, isStruckOut) =>
      onOne(id, (shot) => played.put({ ...shot, asMeant: !isStruckOut })),
    removeShot: (id) => onOne(id, () => played.remove(id)),
    takeBack: (id) => onOne(id, () => played.removeAll([id])),
    forgetRemoved: played.forgetRemoved,
    restoreShot: () => (played.putBack() ? OK : NOTHING_REMOVED),
  };
}
