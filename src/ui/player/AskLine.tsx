import { isUntold } from '../../state/player/player-question';
import type { Models } from '../app-models';
import { forWords, isStandIn } from './player-words';
import './AskLine.css';

/** Whether nothing is known of whoever plays, and they were never asked. */
function isToBeAsked({ player }: Models<'player'>): boolean {
  const now = player.inPlay.value;
  return !now.wasAsked && !isStandIn(now) && isUntold(player.question.value);
}

/** One line on Shot, until it is answered or skipped for good: the way to a chance of one's own. */
export function AskLine({ app }: { app: Models<'player' | 'router'> }) {
  const { player, router } = app;
  if (!isToBeAsked(app)) return null;
  return (
    <section class="ask-line" aria-label="Whom it is told for">
      <button
        type="button"
        class="button"
        data-opens="question"
        onClick={() => router.open('question')}
      >
        <span>
          How often would {forWords(player.inPlay.value)} make it? <b>Answer one question</b>
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
