import type { WayKind } from '../../../engine/goal/goal';
import type { WayFilter } from '../../../state/choose/all-ways/all-ways';
import { isSafety, type ShownWay } from '../../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { FILTERS } from './kind-words';

/** What is listed; once ways were looked for, with how many of each kind, and out of how many. */
export function KindChips({ choose: { all } }: { choose: ChooseModel }) {
  const { ways, state, found } = all.search.value;
  const now = all.filter.value;
  return (
    <fieldset class="kind-chips">
      <legend class="visually-hidden">Ways to list, of how many</legend>
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
            {state !== 'none' && counted(listed(ways, filter), found, filter)}
          </b>
        </button>
      ))}
    </fieldset>
  );
}

/** How many are listed; "6/190" once it is known that more were found. */
function counted(ways: readonly ShownWay[], found: readonly WayKind[], filter: WayFilter): string {
  const [shown, of] = [ways.length, foundOf(ways, found, filter)];
  return of > shown ? `${shown}/${of}` : `${shown}`;
}

/** Of all that were found, those that a filter lets through. Of safeties, none are but those told. */
export function foundOf(
  ways: readonly ShownWay[],
  found: readonly WayKind[],
  filter: WayFilter,
): number {
  const safe = ways.filter(isSafety).length;
  return safe + found.filter((kind) => filter === 'all' || kind === filter).length;
}

/** Of ways, those that a filter lets through. */
export function listed(ways: readonly ShownWay[], filter: WayFilter): readonly ShownWay[] {
  return filter === 'all' ? ways : ways.filter(({ told }) => told.goal.kind === filter);
}
