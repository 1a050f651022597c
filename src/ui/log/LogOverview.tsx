import { PLAYER_SKETCH, type Sketch, shotSketch } from '../../diagram/kit-sketch';
import type { Models } from '../app-models';
import { HelpLinks } from '../HelpLinks';
import { PictureRow } from '../kit/PictureRow';
import { AskOnce } from '../player/AskOnce';
import { knownWords } from '../player/learnt-words';
import { LogList } from './LogList';
import { practiceStanding } from './practice-words';
import { testStanding } from './test-words';
import { WhoseLog } from './WhoseLog';

type Log = Models<'log'>['log'];

/** What is played for what it tells: its panel, name, drawing and how it stands. */
const WAYS_IN: readonly (readonly [string, string, Sketch, (log: Log, nowMs: number) => string])[] =
  [
    [
      'test',
      'Level test',
      PLAYER_SKETCH,
      ({ test }, nowMs) => testStanding(test.tests.value, nowMs),
    ],
    [
      'practice',
      'Practice',
      shotSketch(0.5),
      ({ practice }, nowMs) => practiceStanding(practice, nowMs),
    ],
  ];

/** Whose log it is, what is known of them, the level test, and all that they played. */
export function LogOverview({
  app,
}: {
  app: Models<'player' | 'log' | 'kit' | 'desk' | 'nowMs' | 'router'>;
}) {
  const { player, log, nowMs } = app;
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
      <ul class="shelf-list">
        {WAYS_IN.map(([panel, title, sketch, standing]) => (
          <PictureRow key={panel} app={app} panel={panel} sketch={sketch}>
            <b>{title}</b> <span class="shelf-effect">{standing(log, nowMs())}</span>
          </PictureRow>
        ))}
      </ul>
      <output class="place-problem">{player.crowded.value}</output>
      <LogList app={app} />
      <p class="place-note log-rules">
        In a match the league’s rules come first: many forbid a phone. Log once it is over.
      </p>
    </>
  );
}
