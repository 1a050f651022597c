import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { LevelShot } from '../../engine/player/level-test';
import type { Result } from '../../engine/player/shot-line';
import { TEST_SHOTS } from '../../state/log/level-tests';
import { capitalised, pocketWords } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { loggedShot } from './AfterShot';
import { LoggedNews } from './LoggedNews';
import { PlacedBalls } from './PlacedBalls';
import { ResultButtons } from './ResultButtons';
import { TestTable } from './TestTable';
import './LevelTest.css';
import type { Models } from '../app-models';

interface Props {
  readonly app: Models<'player' | 'log' | 'router'>;
  /** Whether to begin a test where one was left. */
  readonly isAnew: boolean;
}

/** One shot of the level test: where the balls lie, and what became of it. */
export function TestShotPanel({ app, isAnew }: Props) {
  const { player, log, router } = app;
  const { test } = log;
  useEffect(() => test.play(isAnew), [test, isAnew]);
  const isScratched = useSignal(false);
  const loggedId = useSignal<string | null>(null);
  const problem = useSignal('');
  const shot = test.next.value;
  // While the next is worked out the last one stays, greyed: buttons keep their place.
  const last = useRef<LevelShot | null>(null);
  if (shot !== null) last.current = shot;
  const shown = shot ?? last.current;
  const played = isAnew ? 0 : (test.unfinished.value?.shots.length ?? 0);
  const answer = (result: Result) => {
    if (shot === null) return;
    const became = { result, scratched: isScratched.value, cueBall: null, asMeant: true };
    const logged = test.answer(became);
    loggedId.value = logged.ok ? logged.id : null;
    problem.value = logged.ok ? '' : logged.problem;
    if (!logged.ok) return;
    isScratched.value = false;
    if (test.unfinished.value === null) router.close();
    else if (isAnew) router.open('test/now');
  };
  const logged = loggedShot(player, loggedId.value);
  return (
    <>
      <PanelHeader router={router} title={`Shot ${played + 1} of ${TEST_SHOTS}`} />
      {shown === null ? (
        <p role="status">{test.problem.value ?? 'Working out the first shot…'}</p>
      ) : (
        <div class={shot === null ? 'test-shot is-stale' : 'test-shot'}>
          <TestTable app={app} shot={shown} />
          <div class="test-side">
            <TestWords app={app} shot={shown} isWaiting={shot === null} />
            <LoggedNews
              app={app}
              logged={logged}
              problem={problem.value || (test.problem.value ?? '')}
              onUndone={() => {
                // The first of a new test is gone: what was left before it is another test.
                if (test.unfinished.value?.id !== logged?.testId) router.open('test/new');
              }}
            />
          </div>
          <ResultButtons
            shot={shown.shot}
            result={null}
            isScratched={isScratched.value}
            isWaiting={shot === null}
            onResult={answer}
            onScratched={(scratched) => (isScratched.value = scratched)}
          />
        </div>
      )}
    </>
  );
}

interface WordsProps {
  readonly app: Models<'player' | 'log' | 'router'>;
  readonly shot: LevelShot;
  readonly isWaiting: boolean;
}

function TestWords({ app: { log }, shot, isWaiting }: WordsProps) {
  return (
    <div class="test-words" role="status">
      {isWaiting ? (
        <p>Working out the next shot…</p>
      ) : (
        <>
          <PlacedBalls shape={log.test.shape.value} {...shot} />
          <p>
            <b>{capitalised(pocketWords(shot.goal.pocket))}</b> pocket, medium speed, centre.
          </p>
        </>
      )}
    </div>
  );
}
