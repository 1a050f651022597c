import type { Random } from './seeded-random';

/** Does something to a text, or to its lines, that nobody meant. */
export type Damage<T> = (whole: T, random: Random) => T;

export const pick = <T>(random: Random, list: readonly T[]): T => {
  const picked = list[Math.floor(random() * list.length)];
  if (picked === undefined) throw new RangeError('nothing to pick from');
  return picked;
};

/** Takes one of the places where a text matches, and puts something else there. */
function replaceOne(
  text: string,
  pattern: RegExp,
  random: Random,
  replacement: (was: string) => string,
): string {
  const places = [...text.matchAll(pattern)];
  if (places.length === 0) return text;
  const { index, 0: was } = pick(random, places);
  return text.slice(0, index) + replacement(was) + text.slice(index + was.length);
}

const otherDigit = (random: Random) => (was: string) =>
  String((Number(was) + 1 + Math.floor(random() * 9)) % 10);

/** What a bad cable, a bad disk, an editor or a mail program can do to a file. */
export const TEXT_DAMAGES: Readonly<Record<string, Damage<string>>> = {
  'a bit flipped': (text, random) => {
    const bytes = new TextEncoder().encode(text);
    const at = Math.floor(random() * bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(random() * 8));
    return new TextDecoder().decode(bytes);
  },
  'cut short': (text, random) => text.slice(0, Math.floor(random() * text.length)),
  'its start cut off': (text, random) => text.slice(1 + Math.floor(random() * text.length)),
  'a piece cut out': (text, random) => {
    const at = Math.floor(random() * text.length);
    return text.slice(0, at) + text.slice(at + 1 + Math.floor(random() * 300));
  },
  'a digit changed': (text, random) => replaceOne(text, /\d/g, random, otherDigit(random)),
  'a bracket removed': (text, random) => replaceOne(text, /[[\]{}]/g, random, () => ''),
  'a space added': (text, random) => replaceOne(text, /[,:]/g, random, (was) => `${was} `),
  'line ends of a mail program': (text) => text.replaceAll('\n', '\r\n'),
  'some line ends of a mail program': (text, random) =>
    text.replaceAll('\n', () => (random() < 0.5 ? '\r\n' : '\n')),
  'old line ends': (text) => text.replaceAll('\n', '\r'),
  'one line end lost': (text, random) => replaceOne(text, /\n/g, random, () => ''),
  'one line end doubled': (text, random) => replaceOne(text, /\n/g, random, () => '\n\n'),
  'its last line end lost': (text) => text.replace(/\n$/, ''),
  'a byte order mark': (text) => `\uFEFF${text}`,
};

/** What can happen to the lines of a file, the first one apart. */
export const LINE_DAMAGES: Readonly<Record<string, Damage<readonly string[]>>> = {
  'two lines swapped': (lines, random) => {
    const [one, other] = [anyRow(lines, random), anyRow(lines, random)];
    return lines.with(one, lines[other] ?? '').with(other, lines[one] ?? '');
  },
  'a line dropped': (lines, random) => lines.toSpliced(anyRow(lines, random), 1),
  'a line doubled': (lines, random) => {
    const at = anyRow(lines, random);
    return lines.toSpliced(anyRow(lines, random), 0, lines[at] ?? '');
  },
};

function anyRow(lines: readonly string[], random: Random): number {
  return 1 + Math.floor(random() * (lines.length - 1));
}

const WRONG = [
  'null',
  'true',
  '"x"',
  '""',
  '-1',
  '0',
  '-0',
  '1e999',
  '-1e999',
  '123456789012345678901234567890',
  '1e-320',
  '[]',
  '{}',
  '[[]]',
  '{"toString":1}',
  '{"~":"NaN"}',
  '{"~":"undefined"}',
  '{"~":"plain"}',
  `${'['.repeat(50)}${']'.repeat(50)}`,
];
const KEYS = ['"__proto__"', '"constructor"', '"prototype"', '"toString"', '"~"', '"id"', '"row"'];

/** What someone with the format in hand can write into a line, and seal again. */
export const FORGED_LINES: Readonly<Record<string, Damage<string>>> = {
  'a figure of another kind': (line, random) =>
    replaceOne(line, /-?\d+(\.\d+)?(e-?\d+)?(?=[,}\]])/g, random, () => pick(random, WRONG)),
  'a text of another kind': (line, random) =>
    replaceOne(line, /(?<=:)"[^"\\]*"/g, random, () => pick(random, WRONG)),
  'another digit': (line, random) => replaceOne(line, /\d/g, random, otherDigit(random)),
  'a key that means something': (line, random) =>
    replaceOne(line, /\{/g, random, () => `{${pick(random, KEYS)}:{"isForged":true},`),
  'a key of another name': (line, random) =>
    replaceOne(line, /"\w+"(?=:)/g, random, () => pick(random, KEYS)),
  'a bracket less': (line, random) => replaceOne(line, /[[\]{}]/g, random, () => ''),
};
