import type { KitFieldPath } from '../store/kit-fields';
import { numberAt, withNumberAt } from '../store/number-at';
import type { ShelfName, Shelves } from '../store/records';
import { copyRecord } from '../store/shelf-changes';
import { formatNumber } from '../units/format-number';
import { nudge } from '../units/nudge';
import { parseNumber } from '../units/parse-number';
import { KIT_PROBLEMS } from '../words/kit-problems';
import { crowded } from './crowded';
import { type CopyResult, type EditResult, NOT_THERE } from './edit-result';
import { type FigureField, type FigureSetting, figureOf } from './figure-field';
import { withoutStep } from './history';
import {
  type Edited,
  withChange,
  withFigure,
  withLike,
  withName,
  withoutLastChange,
} from './kit-edit';
import { figureFields } from './kit-figure';
import type { KitShelves } from './kit-shelves';
import { shownField } from './shown-fields';

const OK = { ok: true } as const;
const NO_SUCH_NUMBER = { ok: false, problem: KIT_PROBLEMS.noSuchNumber } as const;

/** Every way to change what a record says, or to add one. */
export interface KitEdits {
  /** Adds "Name (copy)" to the shelf and says its id; what is in play stays. */
  copy(shelf: ShelfName, id: string): CopyResult;
  rename(shelf: ShelfName, id: string, name: string): EditResult;
  /**
   * Says that something about a record was changed just now: a new tip, a new cloth, washed balls.
   * What was read before belongs to its former self.
   */
  markChange(shelf: ShelfName, id: string, what: string): EditResult;
  /** Takes the last such change back. */
  unmarkChange(shelf: ShelfName, id: string): EditResult;
  /** Says of which record on the shelf the measurements are to start from; null: of none. */
  setLike(shelf: ShelfName, id: string, likeId: string | null): EditResult;
  /** Changes one number, in SI. Refuses one out of range, with a line in the unit shown. */
  edit<S extends ShelfName>(shelf: S, id: string, path: KitFieldPath<S>, value: number): EditResult;
  /** The same from what was typed, in the unit shown. */
  enter(shelf: ShelfName, id: string, path: string, text: string): EditResult;
  /** Moves a number to the next step, a long one where `coarse`, within its range. */
  nudge(shelf: ShelfName, id: string, path: string, towards: 1 | -1, coarse?: boolean): EditResult;
  /** Remembers a number as it is now; what comes back puts it back so. */
  remember(shelf: ShelfName, id: string, path: string): () => void;
}

/** What edits need from outside. */
export interface KitEditPorts {
  /** Gives an id no record has. */
  readonly newId: () => string;
  /** The time of day, ms since 1970. */
  readonly now: () => number;
  /** What figures are told of, and in which units. */
  readonly setting: () => FigureSetting;
}

export function createKitEdits(
  { shelves, find, put }: Pick<KitShelves, 'shelves' | 'find' | 'put'>,
  { newId, now, setting }: KitEditPorts,
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
  const fieldAt = <S extends ShelfName>(shelf: S, path: string) =>
    figureFields(shelf, setting()).find((field) => field.path === path) ?? null;
  const changeFigure = <S extends ShelfName>(
    shelf: S,
    id: string,
    path: string,
    edit: (record: Shelves[S], field: FigureField<S>) => Edited<S>,
  ): EditResult => {
    const field = fieldAt(shelf, path);
    return field ? change(shelf, id, (record) => edit(record, field)) : NO_SUCH_NUMBER;
  };

  return {
    copy(shelf, id): CopyResult {
      const record = find(shelf, id);
      if (!record) return NOT_THERE;
      const problem = crowded(shelves[shelf].peek());
      if (problem !== null) return { ok: false, problem };
      const names = shelves[shelf].peek().map(({ name }) => name);
      const copied = copyRecord(record, newId(), names);
      put(shelf, copied);
      return { ok: true, id: copied.id };
    },
    rename: (shelf, id, name) => change(shelf, id, (record) => withName(record, name)),
    markChange: (shelf, id, what) => change(shelf, id, (record) => withChange(record, what, now())),
    unmarkChange: (shelf, id) => change(shelf, id, withoutLastChange),
    setLike(shelf, id, likeId) {
      if (likeId !== null && !find(shelf, likeId)) return NOT_THERE;
      return change(shelf, id, (record) => withLike(record, likeId));
    },
    edit: (shelf, id, path, value) =>
      changeFigure(shelf, id, path, (record, field) =>
        withFigure(record, field, figureOf(value, shownField(shelf, path, setting().units))),
      ),
    enter: (shelf, id, path, text) =>
      changeFigure(shelf, id, path, (record, field) => enterFigure(record, field, text)),
    nudge: (shelf, id, path, towards, coarse = false) =>
      changeFigure(shelf, id, path, (record, field) => {
        const step = coarse ? field.facts.coarseStep : field.facts.fineStep;
        const next = nudge(field.read(record), step, towards, field.rangeOf(record));
        return withFigure(record, field, next);
      }),
    remember(shelf, id, path) {
      const before = find(shelf, id);
      return () => {
        const now = find(shelf, id);
        if (!before || !now) return;
        const after = withNumbersOf(before, now, fieldAt(shelf, path)?.writes ?? []);
        put(shelf, withoutStep({ before, after: { ...after, origin: now.origin } }, now));
      };
    },
  };
}

/** A record with some numbers of another in their places. */
function withNumbersOf<R extends object>(record: R, other: R, paths: readonly string[]): R {
  return paths.reduce((made, path) => {
    const value = numberAt(other, path);
    return value === null ? made : withNumberAt(made, path, value);
  }, record);
}

function enterFigure<S extends ShelfName>(
  record: Shelves[S],
  field: FigureField<S>,
  text: string,
): Edited<S> {
  const typed = parseNumber(text, field.facts.symbol);
  if (!typed.ok) return { ok: false, problem: typed.message };
  // Leaving a figure as it is shown must not round what is behind it.
  const shown = parseNumber(formatNumber(field.read(record), field.facts));
  if (shown.ok && shown.value === typed.value) return { ok: true, record };
  return withFigure(record, field, typed.value);
}
