import type { SavedPosition } from '../../store/saved-position';
import { copyName, freeCopyName } from '../../store/shelf-changes';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import { crowded } from '../crowded';
import { type EditResult, NOT_THERE } from '../edit-result';
import { typedName } from '../typed-name';
import type { ChooseModel } from './choose-model';
import type { KeptPositions } from './kept-positions';

/** Every way to change which positions there are. */
export type PositionEdits = Pick<
  ChooseModel,
  'openPosition' | 'add' | 'bring' | 'duplicate' | 'rename' | 'remove' | 'restore'
>;

const OK = { ok: true } as const;
const NOTHING_REMOVED = { ok: false, problem: CHOOSE_PROBLEMS.nothingRemoved } as const;

export interface PositionEditsPorts {
  readonly kept: KeptPositions;
  readonly now: () => number;
  readonly newId: () => string;
}

/** Every change is kept at once. */
export function createPositionEdits({ kept, now, newId }: PositionEditsPorts): PositionEdits {
  const names = () => kept.all.peek().map(({ name }) => name);
  const onOne = (id: string, edit: (position: SavedPosition) => EditResult): EditResult => {
    const open = kept.open.peek();
    const position = kept.find(id) ?? (open.id === id ? open : null);
    return position === null ? NOT_THERE : edit(position);
  };

  return {
    openPosition: (id) =>
      onOne(id, () => {
        kept.openOne(id);
        return OK;
      }),
    add() {
      const added = kept.blank(freeName(names()));
      kept.put(added);
      kept.openOne(added.id);
      return added.id;
    },
    bring(given) {
      const problem = crowded(kept.all.peek());
      if (problem !== null) return { ok: false, problem };
      const name = freeCopyName(given.name, names(), 'shared');
      const brought = { ...given, id: newId(), name, changedAtMs: now() };
      kept.put(brought);
      kept.openOne(brought.id);
      return { ok: true, id: brought.id };
    },
    duplicate: (id) =>
      onOne(id, (position) => {
        const problem = crowded(kept.all.peek());
        if (problem !== null) return { ok: false, problem };
        const name = copyName(position.name, names());
        kept.put({ ...position, id: newId(), name, changedAtMs: now() });
        return OK;
      }),
    rename: (id, typed) =>
      onOne(id, (position) => {
        const named = typedName(typed);
        if (!named.ok) return named;
        const { name } = named;
        if (name !== position.name) kept.put({ ...position, name, changedAtMs: now() });
        return OK;
      }),
    remove: (id) =>
      onOne(id, () => {
        kept.remove(id);
        if (kept.openId.peek() === id) kept.openFirst();
        return OK;
      }),
    restore: () => (kept.putBack() ? OK : NOTHING_REMOVED),
  };
}

/** "Position 1", or the first number that is free. */
function freeName(names: readonly string[]): string {
  const taken = new Set(names);
  let number = 1;
  while (taken.has(`Position ${number}`)) number += 1;
  return `Position ${number}`;
}
