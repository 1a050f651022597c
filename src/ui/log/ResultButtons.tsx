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
  onResult(result: Result): void;
  onScratched(isScratched: boolean): void;
}

/** What became of a shot, one tap each; apart from them, whether the cue ball fell. */
export function ResultButtons({
  shot,
  result,
  isScratched,
  isWaiting = false,
  onResult,
  onScratched,
}: Props) {
  const usual = resultsOf(shot);
  const results = result === null || usual.includes(result) ? usual : [...usual, result];
  return (
    <div class="outcome">
      <fieldset class="result-buttons">
        <legend class="visually-hidden">What became of it</legend>
        {results.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={one === result}
            aria-disabled={isWaiting}
            onClick={() => !isWaiting && onResult(one)}
          >
            <ResultMark result={one} /> <span>{RESULT_WORDS[one]}</span>
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
