import { useEffect } from 'preact/hooks';
import type { LevelShot } from '../../engine/player/level-test';
import { TEST_SHOTS } from '../../state/log/level-tests';
import type { Models } from '../app-models';
import { capitalised, pocketWords } from '../choose/table-words';
import { PanelHeader } from '../kit/PanelHeader';
import { TestTable } from './TestTable';
import { ToldLines } from './ToldLines';
import { TrySheet } from './TrySheet';
import { placedLines } from './test-words';
import { useLast } from './use-last';

interface Props {
  readonly app: Models<'player' | 'log' | 'router'>;
  /** Whether to begin a test where one was left. */
  readonly isAnew: boolean;
}

/** One shot of the level test: where the balls lie, and what became of it. */
export function TestShotPanel({ app, isAnew }: Props) {
  const { log, router } = app;
  const { test } = log;
  useEffect(() => test.play(isAnew), [test, isAnew]);
  const shot = test.next.value;
  const shown = useLast(shot);
  const played = isAnew ? 0 : (test.unfinished.value?.shots.length ?? 0);
  return (
    <>
      <PanelHeader router={router} title={`Shot ${played + 1} of ${TEST_SHOTS}`} />
      {shown === null ? (
        <p role="status">{test.problem.value ?? 'Working out the first shot…'}</p>
      ) : (
        <TrySheet
          app={app}
          table={<TestTable app={app} shot={shown} />}
          shot={shown.shot}
          isWaiting={shot === null}
          problem={test.problem.value}
          words={() => <TestWords app={app} shot={shot} />}
          log={(became) => {
            const logged = test.answer(became);
            if (!logged.ok) return logged;
            if (test.unfinished.value === null) router.close();
            else if (isAnew) router.open('test/now');
            return logged;
          }}
          onUndone={(logged) => {
            // The first of a new test is gone: what was left before it is another test.
            if (test.unfinished.value?.id !== logged?.testId) router.open('test/new');
          }}
        />
      )}
    </>
  );
}

interface WordsProps {
  readonly app: Models<'log'>;
  readonly shot: LevelShot | null;
}

function TestWords({ app: { log }, shot }: WordsProps) {
  if (shot === null) return <p>Working out the next shot…</p>;
  return (
    <>
      <ToldLines lines={placedLines(shot, log.test.shape.value)} />
      <p>
        <b>{capitalised(pocketWords(shot.goal.pocket))}</b> pocket, medium speed, centre.
      </p>
    </>
  );
}
