import type { NotedText } from '../store/noted-text';
import type { PlayerRoom, PlayerRoomQuestion } from '../worker/room-client';
import type { AssessRoom } from './room-model';
import { keepStamped, recallStamped, stampBy } from './stamped-text';

/**
 * The room for error last told, noted so that the next visit has it with its first frame. It hangs on
 * nothing but what it was worked out from, so one noted of the very same is the room.
 */
export interface NotedRoom {
  /** Works a room out, and remembers it. */
  readonly assess: AssessRoom;
  /** The room noted of this, if it is what was noted. */
  recall(question: PlayerRoomQuestion): PlayerRoom | null;
  /** Notes the last for the next visit, unless it was noted already. */
  keep(): void;
}

export interface NotedRoomPorts {
  readonly note: NotedText;
  /** A name that another build of the app has not: its engine may tell something else. */
  readonly build: string;
  readonly assess: AssessRoom;
}

export function createNotedRoom({ note, build, assess }: NotedRoomPorts): NotedRoom {
  const stampOf = stampBy(build);
  let last: readonly [PlayerRoomQuestion, PlayerRoom] | null = null;

  return {
    assess: (question, done) =>
      assess(question, (room) => {
        if (room) last = [question, room];
        done(room);
      }),
    recall(question) {
      const text = recallStamped(note, stampOf, [JSON.stringify(question)]);
      return text === null ? null : JSON.parse(text);
    },
    keep() {
      if (last === null) return;
      const [question, room] = last;
      last = null;
      const text = JSON.stringify(room);
      if (isAsWritten(room)) keepStamped(note, stampOf, text, [JSON.stringify(question)]);
    },
  };
}

/** JSON has no word for numbers without end. */
function isAsWritten(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  return typeof value !== 'object' || value === null || Object.values(value).every(isAsWritten);
}
