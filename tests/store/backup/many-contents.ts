import type { Contents } from '../../../src/store/contents';
import type { SavedPosition } from '../../../src/store/saved-position';
import { CURVE_ATTEMPT } from '../invented-attempts';
import { BANK_POSITION } from '../invented-positions';
import { CONTENTS, MY_CUE } from './invented-contents';

const MINUTE_MS = 60_000;

/** So many of each, numbered: cues, shots of trials that were played with them, and positions. */
export function manyContents(cues: number, attempts = cues, positions = cues): Contents {
  const many = <T>(count: number, make: (at: number) => T) =>
    Array.from({ length: count }, (_, at) => make(at));
  const numbered = many(cues, (at) => ({ ...MY_CUE, id: `cue-${at}`, name: `Cue ${at}` }));
  return {
    ...CONTENTS,
    desk: { ...CONTENTS.desk, choice: { ...CONTENTS.desk.choice, cues: 'demo-cue-house' } },
    cues: [...CONTENTS.cues, ...numbered],
    attempts: many(attempts, (at) => ({
      ...CURVE_ATTEMPT,
      id: `attempt-${at}`,
      startedAtMs: CURVE_ATTEMPT.startedAtMs + at * MINUTE_MS,
      choice: { ...CURVE_ATTEMPT.choice, cues: cues > 0 ? `cue-${at % cues}` : 'demo-cue-house' },
    })),
    positions: many(
      positions,
      (at): SavedPosition => ({
        ...BANK_POSITION,
        id: `position-${at}`,
        name: `Position ${at}`,
        changedAtMs: BANK_POSITION.changedAtMs - at * MINUTE_MS,
      }),
    ),
    setAside: [],
  };
}
