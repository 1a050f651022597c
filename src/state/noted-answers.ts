import type { AimResult, SolveAim } from '../engine/direct/shot';
import type { NotedText } from '../store/noted-text';
import { keepStamped, recallStamped, stampBy } from './stamped-text';

/**
 * The answers that the first screen was last drawn from, noted so that the next visit has it at once. An
 * answer hangs on nothing but shot, kit and engine, so one noted of these very three is the answer.
 */
export interface NotedAnswers {
  /** The engine's answer: what was noted, until something is asked that was not. */
  readonly solve: SolveAim;
  /** Notes the last answers for the next visit, unless they were noted already. */
  keep(): void;
}

export interface NotedAnswersPorts {
  readonly note: NotedText;
  /** A name that another build of the app has not: its engine may answer something else. */
  readonly build: string;
  readonly solve: SolveAim;
}

/** The shot's own, those a little softer and firmer that its warnings look at, and a held one's. */
const MOST = 4;

type Asked = Parameters<SolveAim>;

export function createNotedAnswers({ note, build, solve }: NotedAnswersPorts): NotedAnswers {
  const stampOf = stampBy(build);
  const text = recallStamped(note, stampOf);
  let noted: ReadonlyMap<string, AimResult> | null = text ? new Map(JSON.parse(text)) : null;
  let last: readonly (readonly [Asked, AimResult])[] = [];

  return {
    solve(...asked) {
      const found = noted?.get(JSON.stringify(asked));
      if (!found) noted = null;
      const result = found ?? solve(...asked);
      last = [...last.slice(1 - MOST), [asked, result]];
      return result;
    },
    keep() {
      if (noted) return;
      const answers = last.map(([asked, result]) => [JSON.stringify(asked), result]);
      keepStamped(note, stampOf, JSON.stringify(answers));
    },
  };
}
