import { type NotedText, readNoted } from '../../store/noted-text';
import { stampBy } from '../stamped-text';
import type { PlayerQuestion } from './player-question';

/**
 * What was last learnt of the players last asked about, noted so that the next visit need not wait for
 * it. It stands for no shot: whatever is logged has it learnt anew.
 */
export interface NotedPlayers<Learnt> {
  /** Null where nothing is noted that is the answer to this very question, by this very build. */
  recall(question: PlayerQuestion): Learnt | null;
  keep(question: PlayerQuestion, learnt: Learnt): void;
  /** Nothing of them is to be left. */
  forget(id: string): void;
}

/** As many as a coach sees in a week; a note takes some kilobytes. */
const MOST_NOTED = 12;

type Noted = readonly [id: string, stamp: string, text: string];

/** @param build a name that another build of the app has not: its engine may tell something else */
export function createNotedPlayers<Learnt>(note: NotedText, build: string): NotedPlayers<Learnt> {
  const stampOf = stampBy(build);
  const noted = (): readonly Noted[] => {
    const found = readNoted(note);
    return Array.isArray(found) ? found.filter(isNoted) : [];
  };

  const withoutOne = (id: string) => noted().filter(([other]) => other !== id);
  const write = (all: readonly Noted[]) => {
    note.set(all.length === 0 ? null : JSON.stringify(all.slice(0, MOST_NOTED)));
  };

  return {
    recall(question) {
      const [, stamp, text = ''] = noted().find(([id]) => id === question.playerId) ?? [];
      return stamp === stampOf(question.lines, text) ? JSON.parse(text) : null;
    },
    keep(question, learnt) {
      const text = JSON.stringify(learnt);
      const id = question.playerId;
      write([[id, stampOf(question.lines, text), text], ...withoutOne(id)]);
    },
    forget: (id) => write(withoutOne(id)),
  };
}

function isNoted(was: unknown): was is Noted {
  return Array.isArray(was) && was.length === 3 && was.every((part) => typeof part === 'string');
}
