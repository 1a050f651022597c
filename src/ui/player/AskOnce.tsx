import type { Models } from '../app-models';
import { forWords, isStandIn } from './player-words';
import './AskOnce.css';

interface Props {
  readonly app: Models<'player' | 'router'>;
  /** Where the question is asked. */
  readonly panel: string;
}

/** Where a chance is told for nobody in particular: the way to have it told for whoever plays. */
export function AskOnce({ app: { player, router }, panel }: Props) {
  const now = player.inPlay.value;
  const isKnown = player.isKnown.value && !isStandIn(now);
  if (isKnown && (now.wasAsked || now.madeOf10 !== null)) return null;
  return (
    <button
      type="button"
      class="button ask-once"
      data-opens={panel}
      onClick={() => router.open(panel)}
    >
      <span>
        {isKnown ? 'Surer' : 'Chances'} for {forWords(now, 12)}: <b>one question</b>
      </span>
      <span aria-hidden="true">›</span>
    </button>
  );
}
