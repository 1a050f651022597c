import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Goal } from '../../engine/goal/goal';
import type { LaidWay } from '../../engine/worth/laid-way';
import { isSame } from '../../store/same-value';
import type { SavedPosition } from '../../store/saved-position';
import type { CopyResult } from '../edit-result';

/** The way that came from elsewhere with a position. */
export interface BroughtWay {
  /** Null where none came with the open one, or its balls lie otherwise since. */
  readonly way: ReadonlySignal<LaidWay | null>;
  /** Has a position kept without its way, which is remembered. */
  bring(given: SavedPosition, keep: (position: SavedPosition) => CopyResult): CopyResult;
}

/** @param open as it is kept */
export function createBroughtWay(open: ReadonlySignal<SavedPosition>): BroughtWay {
  const last = signal<(Pick<SavedPosition, 'id' | 'balls'> & { readonly way: LaidWay }) | null>(
    null,
  );
  return {
    way: computed(() => {
      const { id, balls } = open.value;
      const came = last.value;
      return came?.id === id && isSame(came.balls, balls) ? came.way : null;
    }),
    bring({ drill, ...position }, keep) {
      const kept = keep(position);
      const { balls, goal } = position;
      const { ball, pocket } = goal;
      if (kept.ok && drill && ball !== null && pocket !== null) {
        const { kind, via, stroke } = drill;
        const way = { goal: { kind, ball, pocket, via } as Goal, stroke };
        last.value = { id: kept.id, balls, way };
      }
      return kept;
    },
  };
}
