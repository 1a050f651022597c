import { useSignal } from '@preact/signals';
import type { EditResult } from '../../state/edit-result';
import type { DrillPosition } from '../../state/log/kept-drills';
import type { Models } from '../app-models';
import { DrawnWay } from '../choose/all-ways/WayPicture';
import { PositionName } from '../choose/PositionName';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import { RecordRow } from '../kit/RecordRow';
import { kindOf } from './drill-lines';
import { tallyWords } from './practice-words';
import { useLaid, usePlayed } from './use-played';

type App = Models<'log' | 'choose' | 'router'>;

/** Ways kept in Choose to be played again: play, name or delete one. */
export function KeptDrills({ app }: { app: App }) {
  const { log, choose } = app;
  const problem = useSignal('');
  const deleted = choose.lastDeleted.value;
  const all = log.practice.kept.all.value;
  const tell = (result: EditResult) => {
    problem.value = result.ok ? '' : result.problem;
    return result.ok;
  };
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

interface RowProps {
  readonly app: App;
  readonly drill: DrillPosition;
  tell(result: EditResult): boolean;
}

function DrillRow({ app, drill, tell }: RowProps) {
  const { log, choose, router } = app;
  const { id, name } = drill;
  const way = usePlayed(app, useLaid(app, drill));
  const isNaming = useSignal(false);
  const turnNaming = () => {
    isNaming.value = !isNaming.peek();
  };
  return (
    <RecordRow
      name={name}
      note={`${kindOf(drill)}, ${tallyWords(log.practice.kept.tally(drill))}`}
      picture={<DrawnWay class="position-picture" way={way} widthPx={92} heightPx={52} />}
      isChosen={false}
      opens={`practice/${id}`}
      onChoose={() => router.open(`practice/${id}`)}
      actions={[
        { label: 'Rename', isExpanded: isNaming.value, onTap: turnNaming },
        { label: 'Card', onTap: () => router.visit('kit', `drill/${id}`) },
        { label: 'Delete', isGrave: true, onTap: () => tell(choose.remove(id)) },
      ]}
    >
      {isNaming.value && (
        <PositionName
          position={drill}
          onRename={(next) => {
            const renamed = choose.rename(id, next);
            if (renamed.ok) isNaming.value = false;
            return renamed;
          }}
        />
      )}
    </RecordRow>
  );
}
