import { pick } from './damage-text';
import { MARKUP } from './hostile-trees';
import { SCREENS } from './screens';
import type { Random } from './seeded-random';

/** Pieces of an address that mean something to somebody, though not to the app. */
const PIECES = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '..',
  '.',
  '',
  '%00',
  '%zz',
  '%E0%A4%A',
  '\u202e',
  '😀',
  '?x=1',
  '#',
  '&',
  'NaN',
  '-1',
  'javascript:window.isOverrun=true',
  encodeURIComponent(MARKUP),
  MARKUP,
  'x'.repeat(5000),
];

/** What may follow `#` in a link that someone made up to see what breaks. */
export function hostileHash(random: Random): string {
  const parts = pick(random, SCREENS).split('/');
  const changes = 1 + Math.floor(random() * 3);
  for (let change = 0; change < changes; change += 1) {
    const at = Math.floor(random() * (parts.length + 1));
    const kept = random() < 0.5 ? (parts[at] ?? '').slice(0, Math.floor(random() * 12)) : '';
    parts.splice(at, random() < 0.7 ? 1 : 0, kept + pick(random, PIECES));
  }
  return `${random() < 0.1 ? '#/' : '#'}${parts.join('/')}`;
}
