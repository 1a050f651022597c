import type { KindCounts } from '../../../engine/ways/pick-ways';
import type { WayFilter } from '../../../state/choose/all-ways/all-ways';
import type { ShownWay } from '../../../state/choose/all-ways/look-for-ways';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { FILTERS } from './kind-words';

/** What is listed; once ways were looked for, with how many of each kind, and out of how many. */
export function KindChips({ choose: { all } }: { choose: ChooseModel }) {
  const { ways, state, differ } = all.search.value;
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
          <b class="kind-count">
            {state !== 'none' && (
              <Count shown={listed(ways, filter).length} of={differ && countOf(differ, filter)} />
            )}
          </b>
        </button>
      ))}
    </fieldset>
  );
}

/** How many are listed, "6/190" where that is not all; out of how many is null until that is known. */
function Count({ shown, of }: { shown: number; of: number | null }) {
  if (of === null || of <= shown) return <>{shown}</>;
  return (
    <>
      <span aria-hidden="true">
        {shown}/{of}
      </span>
      <span class="visually-hidden">
        {shown} of {of}
      </span>
    </>
  );
}

/** Of ways that really differ, how many a filter lets through. */
export function countOf(differ: KindCounts, filter: WayFilter): number {
  if (filter !== 'all') return differ[filter];
  return Object.values(differ).reduce((sum, count) => sum + count, 0);
}

/** Of ways, those that a filter lets through. */
export function listed(ways: readonly ShownWay[], filter: WayFilter): readonly ShownWay[] {
  return filter === 'all' ? ways : ways.filter(({ told }) => told.goal.kind === filter);
}
