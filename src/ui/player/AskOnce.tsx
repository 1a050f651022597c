import { useSignal } from '@preact/signals';
import type { Models } from '../app-models';
import { forWords } from './player-words';
import { TheQuestion } from './TheQuestion';
import './AskOnce.css';

/** Where a chance is told for nobody in particular: the way to have it told for whoever plays. */
export function AskOnce({ app }: { app: Models<'player' | 'kit'> }) {
  const { player } = app;
  const isOpen = useSignal(false);
  if (player.isKnown.value && !isOpen.value) return null;
  const { wasAsked } = player.inPlay.value;
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
          <p>
            {wasAsked
              ? `Told for most players, not for ${forWords(player.inPlay.value)}.`
              : `So far this is for most players. One question tells it for ${forWords(player.inPlay.value)}.`}
          </p>
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
