import { useEffect } from 'preact/hooks';
import { layOutTestBar } from '../../diagram/test-bar';
import type { KnownPlayer } from '../../engine/player/player-report';
import { MOST_TOLD } from '../../state/log/level-test-model';
import { type LevelTest, TEST_SHOTS } from '../../state/log/level-tests';
import { leansOf } from '../../state/player/leans';
import { radOf } from '../../units/angle-degrees';
import { PanelHeader } from '../kit/PanelHeader';
import { lengthAway, shortStray } from '../player/learnt-words';
import { dayHeading, wentWords } from './log-words';
import { testLines } from './test-words';
import './LevelTest.css';
import type { Models } from '../app-models';

type App = Models<'log' | 'kit' | 'desk' | 'nowMs' | 'router'>;

/** What the level test is, the way into it, and what it told so far. */
export function LevelTestPanel({ app }: { app: App }) {
  const { log, router } = app;
  const { test } = log;
  useEffect(() => test.tell(), [test]);
  const unfinished = test.unfinished.value;
  return (
    <>
      <PanelHeader router={router} title="Level test" />
      <p>
        Fifteen shots laid by the diamonds, each the one that tells most just then. Medium speed,
        the centre of the ball; aim as you always do. It takes ten minutes, and can be left at any
        shot.
      </p>
      <p class="place-note">
        Each result is from its own fifteen shots, so tests months apart compare: further right is
        steadier.
      </p>
      <div class="test-begin">
        {unfinished && (
          <button
            type="button"
            class="button button-main"
            data-opens="test/now"
            onClick={() => router.open('test/now')}
          >
            Go on: {unfinished.shots.length} of {TEST_SHOTS} played
          </button>
        )}
        <button
          type="button"
          class={unfinished ? 'button' : 'button button-main'}
          data-opens="test/new"
          onClick={() => router.open('test/new')}
        >
          {unfinished ? 'Begin anew' : 'Begin'}
        </button>
      </div>
      <output class="place-problem">{test.problem.value}</output>
      <Told app={app} />
    </>
  );
}

/** The last test in words, and all of them on one scale. */
function Told({ app }: { app: App }) {
  const { log, nowMs } = app;
  const { tests, told } = log.test;
  const done = tests.value.filter(({ isDone }) => isDone).reverse();
  const last = done[0];
  if (last === undefined) return null;
  const known = told.value.get(last.id);
  return (
    <>
      <section class="test-told" aria-labelledby="test-told">
        <h2 id="test-told">{dayHeading(last.begunAtMs, nowMs())}: what these shots tell</h2>
        {known ? (
          <ul class="test-lines">
            {testLines(app, known, leansOf(known)).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        ) : (
          <p>Working it out…</p>
        )}
      </section>
      <section class="test-told" aria-labelledby="test-all">
        <h2 id="test-all">{done.length === 1 ? 'On the scale' : 'Test by test'}</h2>
        <p class="place-note">
          The left end is {lengthAway(app, radOf(1))}. Bars that hardly overlap are a change, others
          may be luck.
        </p>
        <ul class="test-bars">
          {done.slice(0, MOST_TOLD).map((one) => (
            <TestRow key={one.id} app={app} test={one} known={told.value.get(one.id)} />
          ))}
        </ul>
      </section>
    </>
  );
}

interface RowProps {
  readonly app: App;
  readonly test: LevelTest;
  readonly known: KnownPlayer | undefined;
}

function TestRow({ app, test, known }: RowProps) {
  const bar = known && layOutTestBar(known.lineRad);
  const percent = (share: number) => `${(100 * (1 - share)).toFixed(1)}%`;
  return (
    <li>
      <p>
        <b>{dayHeading(test.begunAtMs, app.nowMs())}</b>{' '}
        {known ? shortStray(app, known.lineRad) : '…'}{' '}
        <span class="shelf-origin">{wentWords(test.shots)}</span>
      </p>
      <svg class="test-bar" aria-hidden="true">
        <line class="test-track" x2="100%" y1="10" y2="10" />
        {bar && (
          <>
            <line x1={percent(bar.to)} x2={percent(bar.from)} y1="10" y2="10" />
            <line class="test-mid" x1={percent(bar.at)} x2={percent(bar.at)} y1="3" y2="17" />
          </>
        )}
      </svg>
    </li>
  );
}
