import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { AskOnce } from '../player/AskOnce';
import { knownWords } from '../player/learnt-words';
import { LogList } from './LogList';
import { practiceStanding } from './practice-words';
import { testStanding } from './test-words';
import { WhoseLog } from './WhoseLog';
import '../kit/KitLists.css';

/** Whose log it is, what is known of them, the level test, and all that they played. */
export function LogOverview({
  app,
}: {
  app: Models<'player' | 'log' | 'kit' | 'desk' | 'nowMs' | 'router'>;
}) {
  const { player, log, router, nowMs } = app;
  const [known, leans] = [player.known.value, player.leans.value];
  const isStale = !player.isFresh.value;
  return (
    <>
      <header class="place-head">
        <h1 class="place-title" tabIndex={-1}>
          Log
        </h1>
        <HelpLinks app={app} />
      </header>
      <WhoseLog app={app} />
      {known && leans && (
        <p class={isStale ? 'player-known is-stale' : 'player-known'}>
          {knownWords(app, known, leans, player.inPlay.value)}
        </p>
      )}
      <AskOnce app={app} panel="question" />
      <button type="button" class="shelf-row" data-opens="test" onClick={() => router.open('test')}>
        <b>Level test</b>{' '}
        <span class="shelf-effect">{testStanding(log.test.tests.value, nowMs())}</span>
        <span class="shelf-arrow" aria-hidden="true">
          ›
        </span>
      </button>
      <button
        type="button"
        class="shelf-row"
        data-opens="practice"
        onClick={() => router.open('practice')}
      >
        <b>Practice</b> <span class="shelf-effect">{practiceStanding(log.practice, nowMs())}</span>
        <span class="shelf-arrow" aria-hidden="true">
          ›
        </span>
      </button>
      <p class="place-note log-rules">
        In a match the league’s rules come first: many forbid a phone. Log once it is over.
      </p>
      <output class="place-problem">{player.crowded.value}</output>
      <LogList app={app} />
    </>
  );
}
