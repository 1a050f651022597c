import { expect, it } from 'vitest';
import { cutPicks, isPicked, mouthPicks, speedPicks } from '../../../src/ui/shot/quick-picks';
import { SPEED_UNITS } from '../../../src/units/speed-unit';

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

const KMH = { facts: SPEED_UNITS.kmh };

it('offers the speed words in the unit chosen', () => {
  expect(
    speedPicks({ ...KMH, inUnit: (mps) => mps * 3.6 }, null).find(({ label }) => label === 'medium')
      ?.figure,
  ).toBeCloseTo(5.4, 9);
});

it('offers the softest that reaches the pocket, a step above its edge, and keeps its place', () => {
  const picksAt = (mps: number | null) => speedPicks({ ...KMH, inUnit: (at) => at * 3.6 }, mps);
  // 0.94 m/s is 3.384 km/h; a step is half a kilometre.
  const label = 'just reaches the pocket';
  expect(picksAt(0.94).at(-1)).toEqual({ label, figure: 3.5 });
  expect(picksAt(null).at(-1)).toEqual({ label, figure: null });
});

it('offers mouths by name and width, within what the WPA allows of corner and side', () => {
  expect(mouthPicks('mm').map(({ label }) => label)).toEqual([
    'tight 108',
    'corner 116',
    'side 128',
  ]);
  const [tight, corner, side] = mouthPicks('in').map(({ figure }) => (figure ?? Number.NaN) * 25.4);
  expect(tight).toBeLessThan(114.3);
  expect(corner).toBeGreaterThan(114.3);
  expect(corner).toBeLessThan(117.5);
  expect(side).toBeGreaterThan(127);
  expect(side).toBeLessThan(130.2);
});

it('knows a picked figure in spite of what conversion leaves', () => {
  expect(isPicked(0.1 + 0.2, 0.3)).toBe(true);
  expect(isPicked(0.31, 0.3)).toBe(false);
});
