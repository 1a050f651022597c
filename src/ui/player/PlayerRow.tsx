import { PLAYER_SKETCH } from '../../diagram/kit-sketch';
import type { Models } from '../app-models';
import { isOpen } from '../kit/is-open';
import { KitPicture } from '../kit/KitPicture';
import { knownWords } from './learnt-words';

/** The way from Kit to the players: who plays, and what is known of them. */
export function PlayerRow({ app }: { app: Models<'player' | 'kit' | 'desk' | 'router'> }) {
  const { player, router } = app;
  const { name } = player.inPlay.value;
  const [known, leans] = [player.known.value, player.leans.value];
  return (
    <button
      type="button"
      class="shelf-row has-picture"
      data-opens="players"
      aria-current={isOpen(router, 'players')}
      onClick={() => router.open('players')}
    >
      <KitPicture sketch={PLAYER_SKETCH} />
      <span class="shelf-words">
        <span class="shelf-label">Player</span> <b>{name}</b>{' '}
        <span class="shelf-effect">
          {known && leans
            ? knownWords(app, known, leans, player.inPlay.value)
            : 'Chances are for most players until one question is answered.'}
        </span>
      </span>
      <span class="shelf-arrow" aria-hidden="true">
        ›
      </span>
    </button>
  );
}
