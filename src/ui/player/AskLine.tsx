import type { Models } from '../app-models';
import { forWords } from './player-words';
import './AskLine.css';

/** One line on Shot, until it is answered or skipped for good: the way to a chance of one's own. */
export function AskLine({ app }: { app: Models<'player' | 'router'> }) {
  const { player, router } = app;
  const now = player.inPlay.value;
  if (now.wasAsked || now.madeOf10 !== null) return null;
  return (
    <section class="ask-line" aria-label="Whom it is told for">
      <button
        type="button"
        class="button"
        data-opens="question"
        onClick={() => router.open('question')}
      >
        <span>
          {player.isKnown.value
            ? 'Told from few shots. '
            : `How often would ${forWords(now)} make it? `}
          <b>Answer one question</b>
        </span>
        <span aria-hidden="true">›</span>
      </button>
      <button
        type="button"
        class="button button-bare"
        aria-label="Skip the question"
        onClick={() => player.putAside()}
      >
        Skip
      </button>
    </section>
  );
}
