import { copyRecord } from '../store/copy-record';
import type { KitField, KitFieldPath } from '../store/kit-fields';
import type { ShelfName, Shelves } from '../store/records';
import { formatNumber } from '../units/format-number';
import { nudge } from '../units/nudge';
import { parseNumber } from '../units/parse-number';
import { type Edited, findField, withFigure, withName } from './kit-edit';
import { figureAt, figureOf, shownRange } from './kit-figure';
import type { KitShelves } from './kit-shelves';

const OK = { ok: true } as const;
const NO_SUCH_NUMBER = { ok: false, problem: 'There is no such number here.' } as const;
export const NOT_THERE = { ok: false, problem: 'This one is no longer here.' } as const;

export type EditResult =
  | { readonly ok: true }
  | {
      readonly ok: false;
      /** One kind line, ready to show. */
      readonly problem: string;
    };

export type CopyResult =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly problem: string };

/** Every way to change what a record says, or to add one. */
export interface KitEdits {
  /** Adds "Name (copy)" to the shelf and says its id; what is in play stays. */
  copy(shelf: ShelfName, id: string): CopyResult;
  rename(shelf: ShelfName, id: string, name: string): EditResult;
  /** Changes one number, in SI. Refuses one out of range, with a line in the unit shown. */
  edit<S extends ShelfName>(shelf: S, id: string, path: KitFieldPath<S>, value: number): EditResult;
  /** The same from what was typed, in the unit shown. */
  enter(shelf: ShelfName, id: string, path: string, text: string): EditResult;
  /** Moves a number to the next step, a long one where `coarse`, within its range. */
  nudge(shelf: ShelfName, id: string, path: string, towards: 1 | -1, coarse?: boolean): EditResult;
}

/** @param newId gives an id no record has. */
export function createKitEdits(
  { shelves, find, put }: Pick<KitShelves, 'shelves' | 'find' | 'put'>,
  newId: () => string,
): KitEdits {
  const change = <S extends ShelfName>(
    shelf: S,
    id: string,
    edit: (record: Shelves[S]) => Edited<S>,
  ): EditResult => {
    const record = find(shelf, id);
    if (!record) return NOT_THERE;
    const edited = edit(record);
    if (!edited.ok) return edited;
    if (edited.record !== record) put(shelf, edited.record);
    return OK;
  };
  const changeFigure = <S extends ShelfName>(
    shelf: S,
    id: string,
    path: string,
    edit: (record: Shelves[S], field: KitField) => Edited<S>,
  ): EditResult => {
    const field = findField(shelf, path);
    return field ? change(shelf, id, (record) => edit(record, field)) : NO_SUCH_NUMBER;
  };

  return {
    copy(shelf, id): CopyResult {
      const record = find(shelf, id);
      if (!record) return NOT_THERE;
      const names = shelves[shelf].peek().map(({ name }) => name);
      const copied = copyRecord(record, newId(), names);
      put(shelf, copied);
      return { ok: true, id: copied.id };
    },
    rename: (shelf, id, name) => change(shelf, id, (record) => withName(record, name)),
    edit: (shelf, id, path, value) =>
      changeFigure(shelf, id, path, (record, field) =>
        withFigure(record, field, figureOf(value, field)),
      ),
    enter: (shelf, id, path, text) =>
      changeFigure(shelf, id, path, (record, field) => enterFigure(record, field, text)),
    nudge: (shelf, id, path, towards, coarse = false) =>
      changeFigure(shelf, id, path, (record, field) => {
        const step = coarse ? field.facts.coarseStep : field.facts.fineStep;
        const next = nudge(figureAt(record, field), step, towards, shownRange(field));
        return withFigure(record, field, next);
      }),
  };
}

function enterFigure<S extends ShelfName>(
  record: Shelves[S],
  field: KitField,
  text: string,
): Edited<S> {
  const typed = parseNumber(text, field.facts.symbol);
  if (!typed.ok) return { ok: false, problem: typed.message };
  // Leaving a figure as it is shown must not round what is behind it.
  const shown = parseNumber(formatNumber(figureAt(record, field), field.facts));
  if (shown.ok && shown.value === typed.value) return { ok: true, record };
  return withFigure(record, field, typed.value);
}
