import { useRef } from 'preact/hooks';
import { traitsOf } from '../../state/measure/trial-traits';
import type { Attempt } from '../../store/attempt';
import { DEMO_CATALOGUE } from '../../store/demo-catalogue';
import { PART_OF } from '../../store/kit-fields';
import type { Named, ShelfName } from '../../store/records';
import type { LaterModels } from '../app-models';
import { RecordName } from '../kit/RecordName';
import { SHELF_LABELS, SHELVES } from '../kit/shelf-labels';
import type { MeasureSession } from './measure-session';

interface Props {
  readonly app: LaterModels<'kit' | 'measure'>;
  readonly session: MeasureSession;
  readonly attempt: Attempt;
}

/** Asks what to call that of which an attempt is the first to tell, while it has an example's name. */
export function NameOwn({ app, session, attempt }: Props) {
  const { kit } = app;
  // As it was at first: a name that is being given does not take its field away.
  const asked = useRef(SHELVES.filter((shelf) => isNewlyRead(app, shelf, attempt))).current;
  if (asked.length === 0 || session.isNamed.value) return null;
  return (
    <section class="name-own" aria-labelledby="name-own">
      <h2 id="name-own">Yours from now on</h2>
      <p class="place-note">It is kept under an example’s name. What do you call it?</p>
      {asked.map((shelf) => (
        <RecordName
          key={shelf}
          app={app}
          shelf={shelf}
          record={kit.current[shelf].value}
          label={SHELF_LABELS[shelf]}
        />
      ))}
      <button
        type="button"
        class="button"
        onClick={() => {
          session.isNamed.value = true;
        }}
      >
        Leave it so
      </button>
    </section>
  );
}

function isNewlyRead(
  { kit, measure }: LaterModels<'kit' | 'measure'>,
  shelf: ShelfName,
  { choice, shot }: Attempt,
): boolean {
  const record = kit.current[shelf].peek();
  const examples: readonly Named[] = DEMO_CATALOGUE[shelf];
  return (
    choice[shelf] === record.id &&
    traitsOf(shot.trial).tells.includes(PART_OF[shelf]) &&
    examples.some(({ id, name }) => id === record.id && name === record.name) &&
    measure.shotsReadOn(shelf, record) === 1
  );
}
