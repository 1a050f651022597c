import { expect, it } from 'vitest';
import { openKit } from './open-kit';

const BALLS = 'demo-balls-clean';

it('shows and takes the numbers of the kit in inches where those are set', async () => {
  const { kit, desk } = await openKit();
  desk.setPreference('lengthUnit', 'in');
  desk.setPreference('distanceUnit', 'in');
  const shown = (shelf: 'balls' | 'tables', path: string) =>
    kit.figures(shelf, kit.current[shelf].value.id).find((figure) => figure.path === path);
  // A pool ball is 2¼ in across, a nine-foot bed 100 in long (WPA).
  expect(shown('balls', 'ballRadiusM')?.figure).toBeCloseTo(2.25, 9);
  expect(shown('balls', 'ballRadiusM')?.facts.symbol).toBe('in');
  expect(shown('tables', 'lengthM')?.figure).toBeCloseTo(100, 9);
  expect(shown('tables', 'bedSlope.alongM_per_M')?.facts.symbol).toBe('in per 100 in');
  expect(kit.enter('balls', BALLS, 'ballRadiusM', '2.06')).toEqual({ ok: true });
  expect(kit.current.balls.value.ballRadiusM).toBeCloseTo(0.026162, 12);
  expect(kit.enter('balls', BALLS, 'ballRadiusM', '28')).toMatchObject({
    ok: false,
    problem: expect.stringMatching(/The most is [\d.]+ in\.$/),
  });
});

it('goes over to inches in all that is short where distances are told in them', async () => {
  const { desk } = await openKit();
  desk.setPreference('lengthUnit', 'cm');
  desk.setPreference('distanceUnit', 'diamonds');
  expect(desk.preferences.value.lengthUnit).toBe('cm');
  desk.setPreference('distanceUnit', 'in');
  expect(desk.preferences.value.lengthUnit).toBe('in');
  desk.setPreference('distanceUnit', 'diamonds');
  expect(desk.preferences.value.lengthUnit).toBe('in');
  desk.setPreference('distanceUnit', 'in');
  desk.setPreference('lengthUnit', 'mm');
  expect(desk.preferences.value).toMatchObject({ distanceUnit: 'in', lengthUnit: 'mm' });
});

it('tells a table in inches where small lengths are told in them', async () => {
  const { kit, desk } = await openKit();
  desk.setPreference('lengthUnit', 'in');
  const [length] = kit
    .figures('tables', kit.current.tables.value.id)
    .flatMap((figure) => (figure.path === 'lengthM' ? [figure] : []));
  // A nine-foot bed is 100 in long (WPA).
  expect(length).toMatchObject({ facts: { symbol: 'in' } });
  expect(length?.figure).toBeCloseTo(100, 9);
});

it('goes on in millimetres and metres where diamonds are counted', async () => {
  const { kit, desk } = await openKit();
  desk.setPreference('distanceUnit', 'diamonds');
  const shown = (shelf: 'balls' | 'tables', path: string) =>
    kit.figures(shelf, kit.current[shelf].value.id).find((figure) => figure.path === path);
  expect(shown('tables', 'lengthM')).toMatchObject({ figure: 2.54, facts: { symbol: 'm' } });
  expect(shown('balls', 'ballRadiusM')).toMatchObject({ figure: 57.15, facts: { symbol: 'mm' } });
});
