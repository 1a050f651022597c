import { crc32 } from '../../store/backup/crc-32';
import type { NotedText } from '../../store/noted-text';
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
  const utf8 = new TextEncoder();
  // Over the text too: what was damaged, or is no text of ours, has another.
  const stampOf = ({ lines }: MeasureQuestion, text: string) =>
    crc32(utf8.encode([build, ...lines, text].join('\n')));

  return {
    recall(question) {
      const [stamp, text] = note.get()?.split('\n') ?? [];
      if (text === undefined || stamp !== stampOf(question, text)) return null;
      const told: Omit<Told, 'question'> = JSON.parse(text);
      return { question, ...told };
    },
    keep({ question, before, now }) {
      const text = JSON.stringify({ before, now });
      note.set(`${stampOf(question, text)}\n${text}`);
    },
    forget() {
      if (note.get() !== null) note.set(null);
    },
  };
}
