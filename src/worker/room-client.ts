import type { RoomForError, roomForError } from '../engine/room/room-for-error';
import type { Work } from './engine-pool';

type RoomJob = Readonly<Parameters<typeof roomForError>>;

/** A worker that the phone took away may well be had again. */
const TRIES = 2;

/**
 * Works out the room for error beside the page: on a slow phone it takes longer than a finger should
 * have to wait. Where it cannot be worked out, nothing is told.
 *
 * @returns has a room worked out and told, unless called off by the function that this gives
 */
export function createRoomClient(work: Work | null) {
  return (job: RoomJob, done: (room: RoomForError) => void): (() => void) => {
    const wanted = new AbortController();
    const { signal } = wanted;
    const ask = (tries: number) => {
      work?.('room', job, signal).then(
        (room) => {
          if (!signal.aborted) done(room);
        },
        () => {
          if (!signal.aborted && tries > 1) ask(tries - 1);
        },
      );
    };
    ask(TRIES);
    return () => wanted.abort();
  };
}
