/** A JSON object whose fields are not yet known to be what they should. */
export type Fields = Readonly<Record<string, unknown>>;

/** Whether a parsed value is a JSON object, and not an array or null. */
export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The object itself, or one without fields. */
export function fieldsOf(value: unknown): Fields {
  return isFields(value) ? value : {};
}

/** The number itself; NaN, which the engine refuses by name, for anything else. */
export function numberOf(value: unknown): number {
  return typeof value === 'number' ? value : Number.NaN;
}

/**
 * A field of what should be an object: undefined where it, or the whole object, is left out; NaN
 * where something else stands in the object's place, so that it is not taken for left out.
 */
export function fieldIn(holder: unknown, key: string): unknown {
  if (holder === undefined) return undefined;
  return isFields(holder) ? holder[key] : Number.NaN;
}

/** The defaults with what was given in their place; names the defaults do not hold are left out. */
export function overlaid<T extends object>(defaults: T, given: unknown): T {
  const entries = Object.entries(defaults).map(([key, value]) => {
    const field = fieldIn(given, key);
    return [key, field === undefined ? value : numberOf(field)];
  });
  return Object.fromEntries(entries);
}

/** What is given, null and nonsense included; the other where nothing is. */
export function orElse(given: unknown, other: unknown): unknown {
  return given === undefined ? other : given;
}
