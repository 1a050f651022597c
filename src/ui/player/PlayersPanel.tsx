import type { EditResult } from '../../state/edit-result';
import type { Player } from '../../store/player';
import type { Models } from '../app-models';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import { PanelHeader } from '../kit/PanelHeader';
import { RecordRow } from '../kit/RecordRow';
import { useProblem } from '../use-problem';
import { standingWords } from './learnt-words';
import { PlaysNow } from './PlaysNow';

interface Props {
  readonly app: Models<'player' | 'router'>;
  /** The panel that was closed, if any: the list begins where its player is, else the one in play. */
  readonly cameFrom: string;
}

/** Everybody who plays: the one in play, others to choose, and to make or delete. */
export function PlayersPanel({ app, cameFrom }: Props) {
  const { player, router } = app;
  const [problem, tell] = useProblem();
  const all = player.players.value;
  const place = (id: string) => all.findIndex((one) => one.id === id);
  const closed = place(cameFrom.replace('players/', ''));
  const startAt = closed >= 0 ? closed : place(player.inPlay.value.id);
  const add = () => {
    const added = player.add(freeName(all));
    tell(added);
    if (added.ok) router.open(`players/${added.id}`);
  };
  return (
    <>
      <PanelHeader router={router} title="Players" />
      <p class="place-note">
        Chances, ways and what is learnt are told for the one in play. Each has an answer and a log
        of their own.
      </p>
      <PlaysNow app={app} />
      <DeletedNews words={deletedWords(app)} onPutBack={() => player.restore()} />
      <output class="place-problem">{problem.value}</output>
      <Paged label="Players" items={all} startAt={startAt}>
        {(shown) => (
          <ul class="record-list">
            {shown.map((one) => (
              <Row key={one.id} app={app} one={one} tell={tell} />
            ))}
          </ul>
        )}
      </Paged>
      <button type="button" class="button" onClick={add}>
        New player
      </button>
      <p>{player.problem.value}</p>
    </>
  );
}

function deletedWords({ player }: Models<'player'>): string {
  const deleted = player.lastDeleted.value;
  if (deleted === null) return '';
  const { length } = deleted.shots;
  const shots = length === 0 ? '' : ` with ${length} ${length === 1 ? 'shot' : 'shots'}`;
  return `${deleted.player.name} is deleted${shots}.`;
}

interface RowProps extends Pick<Props, 'app'> {
  readonly one: Player;
  tell(result: EditResult): boolean;
}

function Row({ app: { player, router }, one, tell }: RowProps) {
  const { id, name } = one;
  const isInPlay = player.inPlay.value.id === id;
  const standing = standingWords(one, player.tallyOf(id));
  const panel = `players/${id}`;
  return (
    <RecordRow
      name={name}
      note={`${standing}${isInPlay ? ', in play' : ''}`}
      isChosen={isInPlay}
      onChoose={() => player.choose(id)}
      actions={[
        { label: 'Look', spoken: 'Look at', opens: panel, onTap: () => router.open(panel) },
        { label: 'Delete', isGrave: true, onTap: () => tell(player.remove(id)) },
      ]}
    />
  );
}

/** "Player 2", or the first number that is free. */
function freeName(all: readonly Player[]): string {
  const taken = new Set(all.map(({ name }) => name));
  let number = all.length + 1;
  while (taken.has(`Player ${number}`)) number += 1;
  return `Player ${number}`;
}
