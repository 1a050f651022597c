import type { NotedText } from '../../store/noted-text';
import { keepStamped, recallStamped, stampBy } from '../stamped-text';
import type { Told } from './known-of-kit';
import type { MeasureQuestion } from './measure-question';

/**
 * What readings told of the kit when that was last worked out, noted so that the next visit need not
 * wait for it. It stands for no reading: whoever looks at the report has it worked out anew.
 */
export interface NotedKnowledge {
  /** Null where nothing is noted that is the answer to this very question, by this very build. */
  recall(question: MeasureQuestion): Told | null;
  keep(told: Told): void;
  /** There are no readings, so nothing is told. */
  forget(): void;
}

/** @param build a name that another build of the app has not: its engine may tell something else */
export function createNotedKnowledge(note: NotedText, build: string): NotedKnowledge {
  const stampOf = stampBy(build);
  return {
    recall(question) {
      const text = recallStamped(note, stampOf, question.lines);
      if (text === null) return null;
      const told: Omit<Told, 'question'> = JSON.parse(text);
      return { question, ...told };
    },
    keep({ question, before, now }) {
      keepStamped(note, stampOf, JSON.stringify({ before, now }), question.lines);
    },
    forget() {
      if (note.get() !== null) note.set(null);
    },
  };
}
