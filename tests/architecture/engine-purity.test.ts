import { expect, it } from 'vitest';
import { readSources } from './source-tree';

const engine = readSources('src/engine');

const pathsWhere = (pattern: RegExp) =>
  engine.filter(({ code }) => pattern.test(code)).map(({ path }) => path);

it('draws no random number and reads no clock in the engine', () => {
  expect(engine.length).toBeGreaterThan(10);
  expect(pathsWhere(/\bMath\s*\.\s*random\b|\bDate\b|\bperformance\b/)).toEqual([]);
});

it('keeps nothing in the engine between two calls', () => {
  expect(pathsWhere(/^(export )?(let|var)\b/m)).toEqual([]);
});

it('hides no loose types anywhere in src', () => {
  const loose = readSources('src').filter(
    ({ text, code }) => /@ts-|biome-ignore/.test(text) || /\bas any\b|:\s*any\b/.test(code),
  );
  expect(loose.map(({ path }) => path)).toEqual([]);
});

/** A literal of several words that ends as a sentence does. */
const SENTENCE = /(['"`])(?:(?!\1)[^\n\\])*[A-Za-z’]+,? [a-z’]+,? (?:(?!\1)[^\n\\])*[.!?…]\1/g;

/** What is thrown is for whoever writes the code. */
const THROWN = /new (?:Range)?Error\([^;]*;/g;

function sentencesIn(code: string): readonly string[] {
  return code.replaceAll(THROWN, '').match(SENTENCE) ?? [];
}

it.each(['src/engine', 'src/store', 'src/state'])(
  'says nothing to a person in %s: src/words does',
  (folder) => {
    const said = readSources(folder).flatMap(({ path, code }) =>
      sentencesIn(code).map((sentence) => `${path}: ${sentence}`),
    );
    expect(said).toEqual([]);
  },
);

it('knows a sentence where it sees one', () => {
  expect(sentencesIn("const A = 'There is no room for it.';")).toHaveLength(1);
  expect(sentencesIn('return `A name has more characters.`;')).toHaveLength(1);
  expect(sentencesIn("throw new RangeError('0 openings; there must be at least 1.');")).toEqual([]);
  expect(sentencesIn("import { a } from './a'; const kind = 'phase-ends';")).toEqual([]);
});
