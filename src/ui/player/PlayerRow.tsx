import type { Models } from '../app-models';
import { knownWords } from './player-words';

/** The way from Kit to the players: who plays, and what is known of them. */
export function PlayerRow({ app: { player, router } }: { app: Models<'player' | 'router'> }) {
  const { name } = player.inPlay.value;
  const [known, leans] = [player.known.value, player.leans.value];
  return (
    <button
      type="button"
      class="shelf-row"
      data-opens="players"
      onClick={() => router.open('players')}
    >
      <span class="shelf-label">Player</span> <b>{name}</b>{' '}
      <span class="shelf-effect">
        {known && leans
          ? knownWords(known, leans, player.inPlay.value)
          : 'Chances are for most players until one question is answered.'}
      </span>
      <span class="shelf-arrow" aria-hidden="true">
        ›
      </span>
    </button>
  );
}
