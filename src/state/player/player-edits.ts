import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { isWithin } from '../../engine/numerics/range';
import { newPlayer } from '../../store/parse-player';
import type { PlayedShot, Player } from '../../store/player';
import { MADE_RANGE } from '../../store/record-ranges';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import { crowded } from '../crowded';
import type { DeskModel } from '../desk-model';
import { type CopyResult, type EditResult, NOT_THERE } from '../edit-result';
import type { KeptRows } from '../kept-rows';
import { typedName } from '../typed-name';

/** A player deleted with all of their shots, while that can be taken back. */
export interface DeletedPlayer {
  readonly player: Player;
  readonly shots: readonly PlayedShot[];
  readonly wasInPlay: boolean;
}

/** A player who was put in play by being added, by id. */
interface AddedPlayer {
  readonly id: string;
  readonly beforeId: string;
}

/** Every way to change who there is, and who plays. */
export interface PlayerEdits {
  /** Says how many of ten of the question's shot whoever plays makes; null takes the answer back. */
  answer(madeOf10: number | null): EditResult;
  /** Puts the question aside unanswered: it is not asked again by itself. */
  putAside(): void;
  /** Adds a player and puts them in play. */
  add(name: string): CopyResult;
  rename(id: string, name: string): EditResult;
  choose(id: string): EditResult;
  /** Deletes a player and all of their shots; the next comes into play. Refuses the last one. */
  remove(id: string): EditResult;
  /** Puts {@link lastDeleted} back, shots and all. */
  restore(): EditResult;
  readonly lastDeleted: ReadonlySignal<DeletedPlayer | null>;
  /** Who was added last, and who played before, until somebody is chosen. */
  readonly lastAdded: ReadonlySignal<AddedPlayer | null>;
}

export interface PlayerEditsPorts {
  readonly players: KeptRows<Player>;
  readonly played: KeptRows<PlayedShot>;
  readonly inPlay: ReadonlySignal<Player>;
  readonly desk: Pick<DeskModel, 'setPlayer'>;
  readonly now: () => number;
  readonly newId: () => string;
}

const OK = { ok: true } as const;
const NOTHING_REMOVED = { ok: false, problem: PLAYER_PROBLEMS.nothingRemoved } as const;
const LAST = { ok: false, problem: PLAYER_PROBLEMS.lastPlayer } as const;

/** Every change is kept at once. */
export function createPlayerEdits(ports: PlayerEditsPorts): PlayerEdits {
  const { players, played, inPlay, desk, now, newId } = ports;
  const lastDeleted = signal<DeletedPlayer | null>(null);
  const lastAdded = signal<AddedPlayer | null>(null);
  const change = (player: Player, part: Partial<Player>) =>
    players.put({ ...player, ...part, changedAtMs: now() });

  return {
    answer(madeOf10) {
      if (madeOf10 !== null && !(Number.isInteger(madeOf10) && isWithin(MADE_RANGE, madeOf10))) {
        throw new RangeError(`${madeOf10} of ten`);
      }
      change(inPlay.peek(), { madeOf10, wasAsked: true });
      return OK;
    },
    putAside: () => change(inPlay.peek(), { wasAsked: true }),
    add(typed) {
      const named = typedName(typed);
      if (!named.ok) return named;
      const problem = crowded(players.all.peek());
      if (problem !== null) return { ok: false, problem };
      const player = newPlayer(newId(), named.name, now());
      batch(() => {
        lastAdded.value = { id: player.id, beforeId: inPlay.peek().id };
        players.put(player);
        desk.setPlayer(player.id);
      });
      return { ok: true, id: player.id };
    },
    rename(id, typed) {
      const player = players.find(id);
      if (player === null) return NOT_THERE;
      const named = typedName(typed);
      if (!named.ok) return named;
      if (named.name !== player.name) change(player, { name: named.name });
      return OK;
    },
    choose(id) {
      if (players.find(id) === null) return NOT_THERE;
      desk.setPlayer(id);
      lastAdded.value = null;
      return OK;
    },
    remove(id) {
      const all = players.all.peek();
      const index = all.findIndex((player) => player.id === id);
      const player = all[index];
      if (player === undefined) return NOT_THERE;
      const rest = all.filter((other) => other !== player);
      const successor = rest[Math.min(index, rest.length - 1)];
      if (successor === undefined) return LAST;
      const wasInPlay = inPlay.peek().id === id;
      const shots = played.all.peek().filter(({ playerId }) => playerId === id);
      batch(() => {
        players.remove(id);
        played.removeAll(shots.map((shot) => shot.id));
        if (wasInPlay) desk.setPlayer(successor.id);
        lastDeleted.value = { player, shots, wasInPlay };
      });
      return OK;
    },
    restore() {
      const deleted = lastDeleted.peek();
      if (deleted === null) return NOTHING_REMOVED;
      batch(() => {
        players.put(deleted.player);
        played.putAll(deleted.shots);
        if (deleted.wasInPlay) desk.setPlayer(deleted.player.id);
        lastDeleted.value = null;
      });
      return OK;
    },
    lastDeleted,
    lastAdded,
  };
}
