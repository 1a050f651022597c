import type { Shot } from '../engine/direct/shot';
import type { ChanceRange, SomePlayers } from '../engine/player/some-players';
import type { RoomForError, RoomQuestion } from '../engine/room/room-for-error';
import type { Work } from './engine-pool';

/** What the room for error of a player's shot is worked out from. */
export interface PlayerRoomQuestion extends RoomQuestion {
  readonly balls: Shot;
  /** Players who may be the one; null where nothing is known of them. */
  readonly some: SomePlayers | null;
}

/** The same, and how far its chance may be off for what is not known of the player. */
export interface PlayerRoom extends RoomForError {
  /** Null where nothing is known of them, or the ball does not go as meant. */
  readonly range: ChanceRange | null;
}

/**
 * Works out the room for error beside the page: on a slow phone it takes longer than a finger should
 * have to wait.
 *
 * @returns has a room worked out and told, null where it cannot be, unless called off by the function
 * that this gives
 */
export function createRoomClient(work: Work | null) {
  return (question: PlayerRoomQuestion, done: (room: PlayerRoom | null) => void): (() => void) => {
    const wanted = new AbortController();
    const { signal } = wanted;
    const tell = (room: PlayerRoom | null) => {
      if (!signal.aborted) done(room);
    };
    if (work === null) done(null);
    else workOut(work, question, signal).then(tell, () => tell(null));
    return () => wanted.abort();
  };
}

async function workOut(
  work: Work,
  { some, ...asked }: PlayerRoomQuestion,
  signal: AbortSignal,
): Promise<PlayerRoom> {
  const room = await work('room', asked, signal);
  if (some === null || room.windows === null) return { ...room, range: null };
  const { balls: shot, target, kit, spread } = asked;
  const { share } = room.chance;
  const range = await work('range', { some, asked: { shot, target, kit, spread }, share }, signal);
  return { ...room, range };
}
