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
