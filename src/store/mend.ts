import * as v from 'valibot';
import type { Range } from '../engine/model/range';

/** Told of every field that had to change. */
export type NoteMend = (field: string, was: unknown, now: unknown) => void;

/** Takes anything and gives something valid, noting each field it had to change. */
export type Mend<T> = (was: unknown, field: string, note: NoteMend) => T;

const PlainObject = v.pipe(
  v.unknown(),
  v.check((input) => !Array.isArray(input)),
  v.record(v.string(), v.unknown()),
);
const FiniteNumber = v.pipe(v.number(), v.finite());

/** Keeps a number in range, moves a finite one to the nearest bound, replaces anything else. */
export function mendNumber(range: Range, fallback: number): Mend<number> {
  const InRange = v.pipe(FiniteNumber, v.minValue(range.min), v.maxValue(range.max));
  return (was, field, note) => {
    if (v.is(InRange, was)) return was;
    const now = v.is(FiniteNumber, was) ? Math.min(range.max, Math.max(range.min, was)) : fallback;
    note(field, was, now);
    return now;
  };
}

/** Keeps one of the known words, replaces anything else. */
export function mendWord<const W extends string>(words: readonly W[], fallback: W): Mend<W> {
  const Known = v.picklist(words);
  return (was, field, note) => {
    if (v.is(Known, was)) return was;
    note(field, was, fallback);
    return fallback;
  };
}

/** For a field newer than what may be stored: where there is none, the default, and no note of it. */
export function mendAbsent<T>(fallback: T, mend: Mend<T>): Mend<T> {
  return (was, field, note) => (was === undefined ? fallback : mend(was, field, note));
}

/** Keeps a line of text, trimmed and shortened to fit; replaces anything else or nothing at all. */
export function mendLine(longest: number, fallback: string): Mend<string> {
  const Line = v.pipe(v.string(), v.trim(), v.nonEmpty());
  return (was, field, note) => {
    const read = v.safeParse(Line, was);
    const now = read.success ? read.output.slice(0, longest).trim() : fallback;
    if (now !== was) note(field, was, now);
    return now;
  };
}

/**
 * Mends each field of an object and keeps the fields it does not know. Something that is no object
 * at all is replaced whole, as one note.
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
      const path = field === '' ? key : `${field}.${key}`;
      source[key] = fields[key](source[key], path, isObject ? note : ignore);
    }
    const now = source as T;
    if (!isObject) note(field, was, now);
    return now;
  };
}

/** An object with fields, rather than null, a list or a bare value. */
export function isPlainObject(input: unknown): input is Record<string, unknown> {
  return v.is(PlainObject, input);
}

function ignore(): void {}
