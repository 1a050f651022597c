import { describe, expect, it } from 'vitest';
import { ENGINE_SUBJECT } from './report/engine-subject';
import { PUBLISHED_FIGURES } from './report/published-figures';
import { REFERENCE_SUBJECT } from './report/reference-subject';

// Sources and tags stand beside the figures.
describe.each([ENGINE_SUBJECT, REFERENCE_SUBJECT])(
  '$name gives the published figures',
  (subject) => {
    describe.each(PUBLISHED_FIGURES)('$law', ({ figures }) => {
      it.each(figures)('$name: $expected', ({ expected, tolerance, of }) => {
        expect(Math.abs(of(subject) - expected)).toBeLessThanOrEqual(tolerance);
      });
    });
  },
);

it('holds them to every figure of the table', () => {
  expect(PUBLISHED_FIGURES.flatMap(({ figures }) => figures)).toHaveLength(97);
});
