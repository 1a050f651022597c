import type { RoomForError, RoomQuestion } from '../engine/room/room-for-error';
import type { Work } from './engine-pool';

/**
 * Works out the room for error beside the page: on a slow phone it takes longer than a finger should
 * have to wait.
 *
 * @returns has a room worked out and told, null where it cannot be, unless called off by the function
 * that this gives
 */
export function createRoomClient(work: Work | null) {
  return (question: RoomQuestion, done: (room: RoomForError | null) => void): (() => void) => {
    const wanted = new AbortController();
    const { signal } = wanted;
    const tell = (room: RoomForError | null) => {
      if (!signal.aborted) done(room);
    };
    if (work === null) done(null);
    else work('room', question, signal).then(tell, () => tell(null));
    return () => wanted.abort();
  };
}
