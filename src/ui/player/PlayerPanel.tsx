import { useEffect } from 'preact/hooks';
import type { LaterModels, Models } from '../app-models';
import { savedWords } from '../kit/backup-words';
import { NameField } from '../kit/NameField';
import { PanelHeader } from '../kit/PanelHeader';
import { knownWords, tallyWords } from './learnt-words';
import { PlaysNow } from './PlaysNow';
import { TheQuestion } from './TheQuestion';

interface Props {
  readonly app: Models<'kit' | 'desk' | 'router'> & LaterModels<'player'>;
  readonly id: string;
}

/** One player: what is known of them, the question, and their file. */
export function PlayerPanel({ app, id }: Props) {
  const { player, router } = app;
  const one = player.find(id);
  if (one === null) {
    return (
      <>
        <PanelHeader router={router} title="Player" />
        <p>This one is no longer here.</p>
      </>
    );
  }
  const isInPlay = player.inPlay.value.id === id;
  return (
    <>
      <PanelHeader router={router} title={`Player: ${one.name}`} />
      <PlaysNow app={app} />
      <NameField onRename={(name) => player.rename(id, name)}>
        {(field, rename) => (
          <input
            {...field}
            type="text"
            autocomplete="off"
            value={one.name}
            onChange={(event) => rename(event.currentTarget.value)}
          />
        )}
      </NameField>
      {isInPlay ? (
        <>
          <Known app={app} />
          <TheQuestion app={app} />
        </>
      ) : (
        <>
          <p class="place-note">Not in play: what is known is told of the one in play.</p>
          <button type="button" class="button" onClick={() => player.choose(id)}>
            Play as this one
          </button>
        </>
      )}
      <PlayerFilePart app={app} id={id} />
    </>
  );
}

function Known({ app }: { app: Models<'player' | 'kit' | 'desk'> }) {
  const { player } = app;
  const [known, leans] = [player.known.value, player.leans.value];
  const tally = player.tallyOf(player.inPlay.value.id);
  return (
    <>
      <p class={player.isFresh.value ? 'player-known' : 'player-known is-stale'}>
        {known && leans
          ? knownWords(app, known, leans, player.inPlay.value)
          : 'Nothing is known yet: chances are told for most players, without figures.'}
      </p>
      {tally.notMeant > 0 && <p class="place-note">{tallyWords(tally)}.</p>}
      <output class="place-problem">{player.problem.value}</output>
    </>
  );
}

/** Hands one player out alone, as a file that *Backup* adds elsewhere. */
function PlayerFilePart({ app: { player }, id }: Props) {
  const { file } = player;
  useEffect(() => file.keepReady(id), [file, id]);
  const outcome = file.outcome.value;
  return (
    <section class="player-file" aria-labelledby="player-file">
      <h2 id="player-file">This player alone</h2>
      <p class="place-note">
        Answer and log in one file. Bring it in under Backup, here or on another phone: nothing
        there is removed.
      </p>
      <button
        type="button"
        class="button"
        disabled={!file.isReady.value}
        onClick={() => void file.save()}
      >
        Save this player
      </button>
      <output class="place-problem">{outcome && savedWords(outcome)}</output>
    </section>
  );
}
