import { computed, useSignal } from '@preact/signals';
import { useId, useMemo } from 'preact/hooks';
import type { KitModel } from '../../state/kit-model';
import { erasOf } from '../../state/measure/era-figures';
import { steady } from '../../state/steady';
import type { ShelfName, Shelves } from '../../store/records';
import { dayWords } from '../../units/ago-words';
import type { LaterModels } from '../app-models';
import { CHANGES, capital, eraWords } from './knowledge-words';
import './RecordHistory.css';

interface Props {
  readonly app: LaterModels<'kit' | 'measure' | 'nowMs' | 'desk'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
}

/** What was measured of a record, between one change of it and the next. */
export function RecordHistory({ app, shelf, record }: Props) {
  const problem = useSignal('');
  const { desk, kit, measure } = app;
  const { lengthUnit } = desk.preferences.value;
  const nowMs = app.nowMs();
  const eras = erasOf(shelf, record, measure.report.value);
  const last = record.changes.at(-1);
  const note = (edited: { readonly ok: boolean; readonly problem?: string }) => {
    problem.value = edited.problem ?? '';
  };
  return (
    <section class="record-history" aria-labelledby="what-was-measured">
      <h2 id="what-was-measured">What was measured</h2>
      <ul>
        {eras.map((era, index) => (
          <li key={index}>{eraWords(era, eras[index + 1] ?? null, nowMs, lengthUnit)}</li>
        ))}
      </ul>
      <p class="place-note">
        Mark a change when it happens: what is read from then on belongs to what it is now.
      </p>
      <div class="record-actions">
        <button
          type="button"
          class="button"
          onClick={() => note(kit.markChange(shelf, record.id, CHANGES[shelf]))}
        >
          {capital(CHANGES[shelf])}
        </button>
        {last && (
          <button
            type="button"
            class="button"
            onClick={() => note(kit.unmarkChange(shelf, record.id))}
          >
            <span aria-hidden="true">↶</span> Not: {last.what}, {dayWords(last.atMs, nowMs)}
          </button>
        )}
      </div>
      <LikeChoice app={app} shelf={shelf} record={record} />
      <output class="place-problem">{problem.value}</output>
    </section>
  );
}

const NOBODY = '';

/** From whose measurements this one starts until it is measured itself. */
function LikeChoice({ app: { kit }, shelf, record }: Props) {
  const selectId = useId();
  // A number of the record may change many times a second, what the others are called seldom does.
  const names = useMemo(() => othersOn(kit, shelf, record.id), [kit, shelf, record.id]);
  const others = names.value;
  const options = useMemo(
    () =>
      others.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      )),
    [others],
  );
  if (others.length === 0) return null;
  return (
    <div class="record-like">
      <label for={selectId}>Starts like</label>
      <select
        id={selectId}
        class="unit-select"
        value={record.like ?? NOBODY}
        onChange={(event) => {
          const { value } = event.currentTarget;
          kit.setLike(shelf, record.id, value === NOBODY ? null : value);
        }}
      >
        <option value={NOBODY}>its own numbers</option>
        {options}
      </select>
    </div>
  );
}

/** What the others on a shelf are called. */
function othersOn({ shelves }: KitModel, shelf: ShelfName, recordId: string) {
  return steady(
    computed(() => {
      const records: readonly Shelves[ShelfName][] = shelves[shelf].value;
      return records.flatMap(({ id, name }) => (id === recordId ? [] : [{ id, name }]));
    }),
  );
}
