import { useSignal } from '@preact/signals';
import type { Player } from '../../store/player';
import type { Models } from '../app-models';
import { forWords, isStandIn } from './player-words';
import { TheQuestion } from './TheQuestion';
import './AskOnce.css';

/** Where a chance is told for nobody in particular: the way to have it told for whoever plays. */
export function AskOnce({ app }: { app: Models<'player' | 'kit'> }) {
  const { player } = app;
  const isOpen = useSignal(false);
  const now = player.inPlay.value;
  if (player.isKnown.value && !isStandIn(now) && !isOpen.value) return null;
  const { wasAsked } = now;
  return (
    <section class="ask-once" aria-label="Whom it is told for">
      {isOpen.value ? (
        <>
          <TheQuestion app={app} />
          <button
            type="button"
            class="button"
            onClick={() => {
              player.putAside();
              isOpen.value = false;
            }}
          >
            {player.isKnown.value ? 'Done' : 'Not now'}
          </button>
        </>
      ) : (
        <>
          <p>{leadWords(now)}</p>
          <button type="button" class="button" onClick={() => (isOpen.value = true)}>
            {wasAsked ? 'The question' : 'Ask me'}
          </button>
          {!wasAsked && (
            <button type="button" class="button" onClick={() => player.putAside()}>
              Not now
            </button>
          )}
        </>
      )}
    </section>
  );
}

function leadWords(player: Player): string {
  const whom = forWords(player);
  if (player.wasAsked) return `Told for most players, not for ${whom}.`;
  const whose = isStandIn(player) ? 'as for the player chosen before' : 'for most players';
  return `So far this is ${whose}. One question tells it for ${whom}.`;
}
