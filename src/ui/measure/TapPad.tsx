import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { TrialName } from '../../engine/fit/trials/trials';
import { createTapClock } from '../../state/measure/tap-clock';
import { FACES } from './trials/faces';
import type { Entry } from './use-entry';
import './TapPad.css';

interface Props {
  readonly entry: Entry;
  readonly trial: TrialName;
  /** Goes over to typing the time. */
  onType(): void;
}

/** One huge pad: the first tap begins, the second ends. Then the time is kept, or taken again. */
export function TapPad({ entry, trial, onType }: Props) {
  const clock = useMemo(createTapClock, []);
  const [first, second] = FACES[trial].timed?.taps ?? ['to begin', 'to end'];
  const isRunning = clock.timer.value.kind === 'running';
  const hasTime = entry.draft.word === 'tapped' && entry.draft.figure !== '';
  const tap = (timeStampMs: number) => {
    clock.tap(timeStampMs);
    const timer = clock.timer.peek();
    if (timer.kind === 'stopped') entry.setTapped(timer.seconds);
  };
  if (hasTime) {
    return (
      <TapTime
        entry={entry}
        onAgain={() => {
          clock.reset();
          entry.clear();
        }}
      />
    );
  }
  return (
    <>
      <button
        type="button"
        class={isRunning ? 'tap-pad is-running' : 'tap-pad'}
        onPointerDown={(event) => {
          if (event.button === 0) tap(event.timeStamp);
        }}
        onClick={(event) => {
          // A key or an assistive tool, which no press precedes.
          if (event.detail === 0) tap(event.timeStamp);
        }}
      >
        <b>Tap</b> <span>{isRunning ? second : first}</span>{' '}
        <span class="tap-pad-count">{isRunning ? <Running /> : '1st of 2 taps'}</span>
      </button>
      <button type="button" class="button" onClick={onType}>
        Type the time instead
      </button>
    </>
  );
}

/** Seconds that have gone by, to see that the first tap counted. */
function Running() {
  const tenths = useSignal(0);
  useEffect(() => {
    const timer = setInterval(() => {
      tenths.value++;
    }, 100);
    return () => clearInterval(timer);
  }, [tenths]);
  return <span aria-hidden="true">{(tenths.value / 10).toFixed(1)} s</span>;
}

function TapTime({ entry, onAgain }: { entry: Entry; onAgain: () => void }) {
  return (
    <div class="tap-time">
      <output class="keypad-text" aria-label="Time">
        <b>{entry.draft.figure}</b> <span class="keypad-unit">seconds</span>
      </output>
      <div class="tap-time-keys">
        <button type="button" class="button key-again" onClick={onAgain}>
          <span aria-hidden="true">↺</span> Again
        </button>
        <button type="button" class="button button-main" onClick={entry.submit}>
          <span aria-hidden="true">✓</span> Keep it
        </button>
      </div>
    </div>
  );
}
