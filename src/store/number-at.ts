/** The finite number at a dotted path (`ballFriction.a`), or null where there is none. */
export function numberAt(holder: unknown, path: string): number | null {
  let found: unknown = holder;
  for (const key of path.split('.')) {
    found = typeof found === 'object' && found !== null ? Reflect.get(found, key) : undefined;
  }
  return typeof found === 'number' && Number.isFinite(found) ? found : null;
}

/** A copy of a record with the number at a dotted path changed; everything else is kept. */
export function withNumberAt<R extends object>(record: R, path: string, value: number): R {
  const dot = path.indexOf('.');
  if (dot < 0) return { ...record, [path]: value };
  const key = path.slice(0, dot);
  const inner: unknown = Reflect.get(record, key);
  const holder = typeof inner === 'object' && inner !== null ? inner : {};
  return { ...record, [key]: withNumberAt(holder, path.slice(dot + 1), value) };
}
