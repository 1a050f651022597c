import type { WayFilter } from '../../../state/choose/all-ways/all-ways';
import type { ShownWay } from '../../../state/choose/all-ways/look-for-ways';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { FILTERS } from './kind-words';

/** What is listed; once ways were looked for, with how many there are of each kind. */
export function KindChips({ choose: { all } }: { choose: ChooseModel }) {
  const { ways, state } = all.search.value;
  const now = all.filter.value;
  return (
    <fieldset class="kind-chips">
      <legend class="visually-hidden">Ways to list</legend>
      {FILTERS.map(([filter, label]) => (
        <button
          key={filter}
          type="button"
          class="button kind-chip"
          aria-pressed={filter === now}
          onClick={() => all.show(filter)}
        >
          <span>{label}</span>
          <b class="kind-count">{state === 'none' ? '' : listed(ways, filter).length}</b>
        </button>
      ))}
    </fieldset>
  );
}

/** Of ways, those that a filter lets through. */
export function listed(ways: readonly ShownWay[], filter: WayFilter): readonly ShownWay[] {
  return filter === 'all' ? ways : ways.filter(({ told }) => told.goal.kind === filter);
}
