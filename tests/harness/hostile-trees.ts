import { pick } from './damage-text';
import type { Random } from './seeded-random';

/** One place in a tree of JSON: a field of an object or an entry of a list. */
interface Place {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

/** Markup that runs where it is taken for more than text. */
export const MARKUP = '<img src=x onerror=isOverrun=1><script>0</script>';

const deep = (depth: number): unknown => (depth === 0 ? 0 : [deep(depth - 1)]);

/** What nobody would write where anything else was expected. Made anew, for it may be changed. */
const HOSTILE: readonly (() => unknown)[] = [
  () => null,
  () => true,
  () => '',
  () => MARKUP,
  () => 'javascript:window.isOverrun=true',
  () => '__proto__',
  () => 'toString',
  () => '\u0000\u202e\ud800',
  () => 'x'.repeat(20_000),
  () => -0,
  () => -1,
  () => 1e308,
  () => 5e-324,
  () => 2 ** 53 + 2,
  () => [],
  () => ({}),
  () => deep(19),
  () => deep(60),
  () => Array.from({ length: 500 }, () => ({})),
  () => ({ '~': 'NaN' }),
  () => ({ '~': 'Infinity' }),
  () => ({ '~': 'plain', of: { '~': 'plain' } }),
  () => JSON.parse('{"__proto__":{"isForged":true}}') as unknown,
  () => ({ constructor: { prototype: { isForged: true } } }),
  () => ({ toString: 1, valueOf: 1, toJSON: 1, length: 1e9 }),
];

const KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'then', 'length', '~', 'id', ''];

/** Ways to change one place of a tree. */
const CHANGES: readonly ((place: Place, places: readonly Place[], random: Random) => void)[] = [
  ({ holder, key }, _, random) => set(holder, key, pick(random, HOSTILE)()),
  ({ holder, key }) => {
    delete holder[key];
  },
  ({ holder, key }, places, random) => {
    const other = pick(random, places);
    set(holder, key, structuredClone(other.holder[other.key]));
  },
  ({ holder, key }, _, random) => set(holder, pick(random, KEYS), structuredClone(holder[key])),
  ({ holder, key }) => set(holder, key, [holder[key]]),
  ({ holder, key }) => set(holder, key, { of: holder[key] }),
];

/** Changes a tree of JSON, where it says something, at some of its places. */
export function twistTree(tree: Record<string, unknown>, random: Random): void {
  const times = 1 + Math.floor(random() * 3);
  for (let time = 0; time < times; time += 1) {
    const places = placesOf(tree);
    if (places.length > 0) pick(random, CHANGES)(pick(random, places), places, random);
  }
}

function placesOf(tree: object): Place[] {
  return Object.entries(tree).flatMap(([key, value]) => [
    { holder: tree as Record<string, unknown>, key },
    ...(typeof value === 'object' && value !== null ? placesOf(value) : []),
  ]);
}

/** As JSON.parse does it: `__proto__` becomes a field like any other. */
function set(holder: Record<string, unknown>, key: string, value: unknown): void {
  // A list has that one already, and for no JSON.
  if (Array.isArray(holder) && key === 'length') return;
  Object.defineProperty(holder, key, {
    value,
    configurable: true,
    enumerable: true,
    writable: true,
  });
}
