import { heldWithin, isWithin, type Range } from '../engine/numerics/range';

/** Told of every field that had to change. */
export type NoteMend = (field: string, was: unknown, now: unknown) => void;

/** Takes anything and gives something valid, noting each field it had to change. */
export type Mend<T> = (was: unknown, field: string, note: NoteMend) => T;

/** Keeps a number in range, moves a finite one to the nearest bound, replaces anything else. */
export function mendNumber(range: Range, fallback: number): Mend<number> {
  return (was, field, note) => {
    const isNumber = typeof was === 'number' && Number.isFinite(was);
    const now = isNumber ? heldWithin(range, was) : fallback;
    if (now !== was) note(field, was, now);
    return now;
  };
}

/** Keeps one of the known words, replaces anything else. */
export function mendWord<const W extends string>(words: readonly W[], fallback: W): Mend<W> {
  return (was, field, note) => {
    const now = words.find((word) => word === was) ?? fallback;
    if (now !== was) note(field, was, now);
    return now;
  };
}

/** For a field newer than what may be stored: where there is none, the default, and no note of it. */
export function mendAbsent<T>(fallback: T, mend: Mend<T>): Mend<T> {
  return (was, field, note) => (was === undefined ? fallback : mend(was, field, note));
}

/** Keeps what can stand as it is, replaces anything else. */
export function mendUnless<T>(canStand: (was: unknown) => was is T, fallback: T): Mend<T> {
  return (was, field, note) => {
    if (canStand(was)) return was;
    note(field, was, fallback);
    return fallback;
  };
}

/** Keeps what is in range. A figure moved to a bound would be an invented one: none stands instead. */
export function mendOrNull(range: Range): Mend<number | null> {
  return mendUnless((was) => was === null || isWithin(range, was), null);
}

/** Keeps an object that can be read, mended, or null; anything else is null. */
export function mendOrNone<T>(canBeRead: (was: unknown) => boolean, mend: Mend<T>): Mend<T | null> {
  return (was, field, note) => {
    if (was === null) return null;
    if (canBeRead(was)) return mend(was, field, note);
    note(field, was, null);
    return null;
  };
}

/** Mends what can be read of a list, as far as it is not too long, and drops the rest of it. */
export function mendList<T>(
  most: number,
  canBeRead: (was: unknown) => boolean,
  mend: Mend<T>,
): Mend<readonly T[]> {
  return (was, field, note) => {
    if (!Array.isArray(was)) note(field, was, []);
    const kept: T[] = [];
    for (const [index, entry] of Array.isArray(was) ? was.entries() : []) {
      const path = `${field}.${index}`;
      if (kept.length < most && canBeRead(entry)) kept.push(mend(entry, path, note));
      else note(path, entry, undefined);
    }
    return kept;
  };
}

/** Keeps a line of text, trimmed and shortened to fit; replaces anything else or nothing at all. */
export function mendLine(longest: number, fallback: string): Mend<string> {
  return (was, field, note) => {
    const line = typeof was === 'string' ? was.trim().slice(0, longest).trim() : '';
    const now = line === '' ? fallback : line;
    if (now !== was) note(field, was, now);
    return now;
  };
}

/**
 * Mends each field of an object and keeps the fields it does not know, unless no JSON could tell
 * them: what is kept here is compared and noted as JSON. Something that is no object at all is
 * replaced whole, as one note.
 */
export function mendObject<T extends object>(
  fields: {
    readonly [K in keyof T]-?: Mend<T[K]>;
  },
): Mend<T> {
  return (was, field, note) => {
    const isObject = isPlainObject(was);
    const source: Record<string, unknown> = isObject ? { ...was } : {};
    for (const key in fields) {
      source[key] = fields[key](source[key], within(field, key), isObject ? note : ignore);
    }
    for (const key of Object.keys(source).filter((name) => !isJson(source[name]))) {
      note(within(field, key), source[key], undefined);
      delete source[key];
    }
    const now = source as T;
    if (!isObject) note(field, was, now);
    return now;
  };
}

/** An object with fields, rather than null, a list or a bare value. */
export function isPlainObject(input: unknown): input is Record<string, unknown> {
  return typeof input === 'object' && input !== null && !Array.isArray(input);
}

function ignore(): void {}

/** A field of a field, dotted. */
export function within(field: string, key: string): string {
  return field === '' ? key : `${field}.${key}`;
}

function isJson(value: unknown): boolean {
  try {
    JSON.stringify(value);
    return true;
  } catch {
    return false;
  }
}
