import { describe, expect, it } from 'vitest';
import { ENGINE_SUBJECT } from './report/engine-subject';
import { speedOf } from './report/figure-cases';
import { MEASURED_TABLE, measuredRebound, rollsIn } from './report/figures-of-cushion';
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
  expect(PUBLISHED_FIGURES.flatMap(({ figures }) => figures)).toHaveLength(110);
});

// Source: as beside the figures, second-hand; it does not say when the speed was taken.
describe.each([ENGINE_SUBJECT, REFERENCE_SUBJECT])(
  '$name takes the measured rebound',
  (subject) => {
    it.each([0.5, 1, 2, 3.5])(
      'for the speed just after: rolling, a ball in at %d m/s is slower',
      (mps) => {
        const after = subject.rebound(rollsIn(mps), MEASURED_TABLE);
        const { body } = subject.untilRoll(after, MEASURED_TABLE);
        expect(speedOf(body)).toBeLessThan(0.7 * measuredRebound(mps));
      },
    );
  },
);
