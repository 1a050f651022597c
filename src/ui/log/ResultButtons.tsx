import type { Stopped } from '../../engine/player/known-player';
import type { Result } from '../../engine/player/shot-line';
import type { PlayedShot } from '../../store/player';
import { RESULT_WORDS, resultsOf } from './log-words';
import { ResultMark } from './ResultMark';
import './ResultButtons.css';

interface Props {
  readonly shot: PlayedShot['shot'];
  /** What was said already; null before. */
  readonly result: Result | null;
  readonly isScratched: boolean;
  /** Whether there is nothing to be said just now: the buttons keep their place. */
  readonly isWaiting?: boolean;
  /** Where the cue ball stopped, on the buttons of a ball that went; left out: it may stop anywhere. */
  readonly stops?: readonly (readonly [Stopped, string])[];
  onResult(result: Result, stopped: Stopped | null): void;
  onScratched(isScratched: boolean): void;
}

interface OneButton {
  readonly one: Result;
  readonly stopped: Stopped | null;
  readonly words: string;
}

/** What became of a shot, one tap each; apart from them, whether the cue ball fell. */
export function ResultButtons({
  shot,
  result,
  isScratched,
  isWaiting = false,
  stops = [],
  onResult,
  onScratched,
}: Props) {
  const usual = resultsOf(shot);
  const results = result === null || usual.includes(result) ? usual : [...usual, result];
  const buttons = results.flatMap((one): readonly OneButton[] =>
    one === 'went' && stops.length > 0
      ? stops.map(([stopped, words]) => ({ one, stopped, words }))
      : [{ one, stopped: null, words: RESULT_WORDS[one] }],
  );
  return (
    <div class="outcome">
      <fieldset class={stops.length > 0 ? 'result-buttons has-stops' : 'result-buttons'}>
        <legend class="visually-hidden">What became of it</legend>
        {buttons.map(({ one, stopped, words }) => (
          <button
            key={words}
            type="button"
            class="button"
            aria-pressed={one === result}
            aria-disabled={isWaiting}
            onClick={() => !isWaiting && onResult(one, stopped)}
          >
            <ResultMark result={one} /> <span>{words}</span>
          </button>
        ))}
      </fieldset>
      <button
        type="button"
        class="button scratch-switch"
        role="switch"
        aria-checked={isScratched}
        onClick={() => onScratched(!isScratched)}
      >
        <span>
          <b>Scratched</b> the cue ball fell
        </span>
        <span class="scratch-state" aria-hidden="true">
          {isScratched ? 'yes' : 'no'}
        </span>
      </button>
    </div>
  );
}
