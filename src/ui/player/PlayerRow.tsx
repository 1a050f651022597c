import { PLAYER_SKETCH } from '../../diagram/kit-sketch';
import type { Models } from '../app-models';
import { PictureRow } from '../kit/PictureRow';
import { knownWords } from './learnt-words';

/** The way from Kit to the players: who plays, and what is known of them. */
export function PlayerRow({ app }: { app: Models<'player' | 'kit' | 'desk' | 'router'> }) {
  const { player } = app;
  const { name } = player.inPlay.value;
  const [known, leans] = [player.known.value, player.leans.value];
  return (
    <PictureRow app={app} panel="players" sketch={PLAYER_SKETCH}>
      <span class="shelf-label">Player</span> <b>{name}</b>{' '}
      <span class="shelf-effect">
        {known && leans
          ? knownWords(app, known, leans, player.inPlay.value)
          : 'Chances are for most players until one question is answered.'}
      </span>
    </PictureRow>
  );
}
