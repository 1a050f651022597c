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

/** The defaults with what was given in their place; names the defaults do not hold are left out. */
export function overlaid<T extends object>(defaults: T, given: Fields): T {
  const entries = Object.entries(defaults).map(([key, value]) => [
    key,
    given[key] === undefined ? value : numberOf(given[key]),
  ]);
  return Object.fromEntries(entries);
}
