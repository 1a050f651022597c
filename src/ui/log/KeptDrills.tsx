import type { EditResult } from '../../state/edit-result';
import type { DrillPosition } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { kindOf } from '../choose/all-ways/laid-words';
import { DrawnWay } from '../choose/all-ways/WayPicture';
import { useNaming } from '../choose/PositionName';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import { RecordRow } from '../kit/RecordRow';
import { useProblem } from '../use-problem';
import { tallyWords } from './practice-words';
import { useLaid, usePlayed } from './use-played';

type App = Models<'log' | 'choose' | 'router'>;

/** Ways kept in Choose to be played again: play, name or delete one. */
export function KeptDrills({ app }: { app: App }) {
  const { log, choose } = app;
  const [problem, tell] = useProblem();
  const deleted = choose.lastDeleted.value;
  const all = log.practice.kept.all.value;
  return (
    <section class="practice-part" aria-labelledby="practice-kept">
      <h2 id="practice-kept">Kept to play again</h2>
      <DeletedNews
        words={deleted?.drill ? `${deleted.name} is deleted.` : ''}
        onPutBack={() => tell(choose.restore())}
      />
      <output class="place-problem">{problem.value}</output>
      {all.length === 0 ? (
        <p class="place-note">
          None yet. In Choose, open a way and tap <b>Keep</b>: position and way are here from then
          on.
        </p>
      ) : (
        <Paged label="Kept to play again" items={all}>
          {(shown) => (
            <ul class="record-list">
              {shown.map((drill) => (
                <DrillRow key={drill.id} app={app} drill={drill} tell={tell} />
              ))}
            </ul>
          )}
        </Paged>
      )}
    </section>
  );
}

/** Of the drawing of a row, px. */
const SIZE = { widthPx: 92, heightPx: 52 };

interface RowProps {
  readonly app: App;
  readonly drill: DrillPosition;
  tell(result: EditResult): boolean;
}

function DrillRow({ app, drill, tell }: RowProps) {
  const { log, choose, router } = app;
  const { id, name } = drill;
  const { rename, field } = useNaming(choose, drill);
  const way = usePlayed(app, useLaid(app, drill));
  return (
    <RecordRow
      name={name}
      note={`${kindOf(drill)}, ${tallyWords(log.practice.kept.tally(drill))}`}
      picture={<DrawnWay class="position-picture" way={way} size={SIZE} />}
      isChosen={false}
      opens={`practice/${id}`}
      onChoose={() => router.open(`practice/${id}`)}
      actions={[
        rename,
        { label: 'Share', onTap: () => router.visit('kit', `share/position/${id}`) },
        { label: 'Card', onTap: () => router.visit('kit', `drill/${id}`) },
        { label: 'Delete', isGrave: true, onTap: () => tell(choose.remove(id)) },
      ]}
    >
      {field}
    </RecordRow>
  );
}
