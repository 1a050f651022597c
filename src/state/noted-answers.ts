import type { AimResult, Shot, SolveAim } from '../engine/direct/shot';
import type { Kit } from '../engine/kit/kit';
import type { NotedText } from '../store/noted-text';
import { keepStamped, recallStamped, stampBy } from './stamped-text';

/**
 * The answers that the first screen was last drawn from, noted so that the next visit has it at once. An
 * answer hangs on nothing but shot, kit and engine, so one noted of these very three is the answer.
 */
export interface NotedAnswers {
  /** The engine's answer: what was noted, until something is asked that was not. */
  readonly solve: SolveAim;
  /** Notes the last answers for the next visit, where any of them is new. */
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

interface Answered {
  readonly shot: Shot;
  readonly kit: Kit;
  readonly result: AimResult;
}

type Noted = readonly (readonly [shot: string, result: AimResult])[];

export function createNotedAnswers({ note, build, solve }: NotedAnswersPorts): NotedAnswers {
  const stampOf = stampBy(build);
  let noted = lookUp(recallStamped(note, stampOf));
  let last: readonly Answered[] = [];
  let isNew = false;

  return {
    solve(shot, kit) {
      const found = noted?.(shot, kit);
      if (!found) {
        noted = null;
        isNew = true;
      }
      const result = found ?? solve(shot, kit);
      last = [...last.slice(1 - MOST), { shot, kit, result }];
      return result;
    },
    keep() {
      const kit = last.at(-1)?.kit;
      if (!isNew || !kit) return;
      isNew = false;
      const of = last.filter((one) => one.kit === kit);
      const answers: Noted = of.map(({ shot, result }) => [JSON.stringify(shot), result]);
      keepStamped(note, stampOf, JSON.stringify([JSON.stringify(kit), answers]));
    },
  };
}

/** Looks an answer up among the noted; null where there are none. */
function lookUp(text: string | null): ((shot: Shot, kit: Kit) => AimResult | undefined) | null {
  if (text === null) return null;
  const [ofKit, answers]: [string, Noted] = JSON.parse(text);
  const byShot = new Map(answers);
  let [kit, isOfKit]: [Kit | null, boolean] = [null, false];
  return (shot, asked) => {
    if (asked !== kit) [kit, isOfKit] = [asked, JSON.stringify(asked) === ofKit];
    return isOfKit ? byShot.get(JSON.stringify(shot)) : undefined;
  };
}
