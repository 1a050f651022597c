import type { StoreName } from '../../src/store/contents';
import { pick } from './damage-text';
import type { Random } from './seeded-random';

/** A row and where it lies. */
export interface LyingRow {
  readonly store: StoreName | 'set-aside' | 'former-contents';
  readonly row: unknown;
}

type Fields = Record<string, unknown>;

/** What no field should hold; each can be stored by a browser, and sent to one. */
const HOSTILE: readonly (() => unknown)[] = [
  () => undefined,
  () => null,
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => -Number.MAX_VALUE,
  () => 1e21,
  () => -0,
  () => '',
  () => '12',
  () => 'x'.repeat(20_000),
  () => '\u0000\uD800<img src=x onerror=alert(1)>',
  () => true,
  () => [],
  () => Array.from({ length: 2000 }, (_, at) => at),
  () => ({}),
  () => nested(60),
  () => JSON.parse('{"__proto__": {"isForged": true}, "constructor": 1, "toString": null}'),
  () => new Date(0),
  () => 10n ** 30n,
];

function nested(depth: number): unknown {
  return depth === 0 ? 'bottom' : { in: nested(depth - 1), id: [depth] };
}

/** Somewhere in a row, however deep, one field is gone or holds what it should not. */
function corruptField(row: Fields, random: Random): Fields {
  const name = pick(random, [...Object.keys(row), 'unheardOf']);
  const was = row[name];
  if (isFields(was) && Object.keys(was).length > 0 && random() < 0.6) {
    return { ...row, [name]: corruptField(was, random) };
  }
  if (Array.isArray(was) && was.length > 0 && random() < 0.6) {
    const at = Math.floor(random() * was.length);
    const entry: unknown = was[at];
    const now = isFields(entry) ? corruptField(entry, random) : pick(random, HOSTILE)();
    return { ...row, [name]: was.with(at, now) };
  }
  if (random() < 0.15)
    return Object.fromEntries(Object.entries(row).filter(([one]) => one !== name));
  return { ...row, [name]: pick(random, HOSTILE)() };
}

/**
 * A row with one to three fields gone bad. Its name is spared, or becomes another that a database
 * takes: it can only hold rows that have one.
 */
export function corruptRow({ store, row }: LyingRow, random: Random): LyingRow {
  const isKeyed = store !== 'desk' && store !== 'set-aside' && store !== 'former-contents';
  if (!isFields(row) || (!isKeyed && random() < 0.2))
    return { store, row: pick(random, HOSTILE)() };
  let bad = row;
  for (let times = Math.ceil(random() * 3); times > 0; times--) bad = corruptField(bad, random);
  if (!isKeyed) return { store, row: bad };
  const id = random() < 0.2 ? pick<unknown>(random, [7, '', ['a', 3], new Date(5)]) : row.id;
  return { store, row: { ...bad, id } };
}

function isFields(value: unknown): value is Fields {
  return (
    typeof value === 'object' && value !== null && !Array.isArray(value) && !(value instanceof Date)
  );
}
