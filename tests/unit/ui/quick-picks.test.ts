import { expect, it } from 'vitest';
import { cutPicks, isPicked, speedPicks } from '../../../src/ui/shot/quick-picks';

it('offers the ball hits as angles, from full to thin', () => {
  const picks = cutPicks('degrees');
  expect(picks.map(({ label }) => label)).toEqual(['full', '¾', '½', '¼', '⅛ ball']);
  const [full, threeQuarters, half, quarter, eighth] = picks.map(({ figure }) => figure);
  expect(full).toBeCloseTo(0, 9);
  expect(threeQuarters).toBeCloseTo(14.478, 3);
  expect(half).toBeCloseTo(30, 9);
  expect(quarter).toBeCloseTo(48.59, 2);
  expect(eighth).toBeCloseTo(61.045, 3);
});

it('offers the speed words in the unit chosen', () => {
  expect(speedPicks('kmh').find(({ label }) => label === 'medium')?.figure).toBeCloseTo(5.4, 9);
});

it('knows a picked figure in spite of what conversion leaves', () => {
  expect(isPicked(0.1 + 0.2, 0.3)).toBe(true);
  expect(isPicked(0.31, 0.3)).toBe(false);
});
