import { LONGEST_NAME } from '../store/parse-named';
import type { ShelfName, Shelves } from '../store/records';
import { checkRange } from '../units/check-range';
import { KIT_PROBLEMS } from '../words/kit-problems';
import { LIST_PROBLEMS } from '../words/list-problems';
import type { FigureField } from './figure-field';
import { typedName } from './typed-name';

/** A record with a change made, or why it was not made. */
export type Edited<S extends ShelfName> =
  | { readonly ok: true; readonly record: Shelves[S] }
  | {
      readonly ok: false;
      /** One kind line, ready to show. */
      readonly problem: string;
    };

/**
 * Changes one figure, given in the unit shown. The record then counts as the person's own.
 * A figure out of range is refused with a line in that unit.
 */
export function withFigure<S extends ShelfName>(
  record: Shelves[S],
  field: FigureField<S>,
  figure: number,
): Edited<S> {
  const checked = checkRange(figure, field.rangeOf(record), field.facts);
  if (!checked.ok) return { ok: false, problem: `${field.label}: ${checked.message}` };
  if (figure === field.read(record)) return { ok: true, record };
  return { ok: true, record: { ...field.write(record, figure), origin: 'by-hand' } };
}

/** Notes that something about a record was changed; what the engine reckons with stays as it was. */
export function withChange<S extends ShelfName>(
  record: Shelves[S],
  typed: string,
  atMs: number,
): Edited<S> {
  const what = typed.trim();
  if (what === '') return { ok: false, problem: KIT_PROBLEMS.noChangeSaid };
  if (what.length > LONGEST_NAME) {
    return { ok: false, problem: LIST_PROBLEMS.longText(LONGEST_NAME) };
  }
  return { ok: true, record: { ...record, changes: [...record.changes, { atMs, what }] } };
}

/** Takes the change noted last back. */
export function withoutLastChange<S extends ShelfName>(record: Shelves[S]): Edited<S> {
  if (record.changes.length === 0) return { ok: false, problem: KIT_PROBLEMS.nothingChanged };
  return { ok: true, record: { ...record, changes: record.changes.slice(0, -1) } };
}

/** Says from which record's measurements this one starts. */
export function withLike<S extends ShelfName>(record: Shelves[S], like: string | null): Edited<S> {
  if (like === record.id) return { ok: false, problem: KIT_PROBLEMS.likeItself };
  return { ok: true, record: { ...record, like } };
}

/** Gives a record another name; where its numbers come from stays as it was. */
export function withName<S extends ShelfName>(record: Shelves[S], typed: string): Edited<S> {
  const named = typedName(typed);
  return named.ok ? { ok: true, record: { ...record, name: named.name } } : named;
}
