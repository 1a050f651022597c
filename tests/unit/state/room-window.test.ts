import { expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import type { RoomWindows } from '../../../src/engine/room/windows';
import { shownWindow } from '../../../src/state/room-window';
import { speedScale } from '../../../src/units/speed-unit';

const windowOf = (low: number, high: number) => ({
  low: { value: low, endedBy: 'thin' as const },
  high: { value: high, endedBy: 'full' as const },
  directionPerUnit: 1,
});

const WINDOWS: RoomWindows = {
  aimRad: windowOf(-0.02, -0.01),
  speedMps: windowOf(1, 2),
  side: windowOf(-0.45, -0.35),
  height: windowOf(-0.1, 0.1),
  elevationRad: windowOf(0, Math.PI / 18),
};

const BED = { tableLengthM: 2.54, kit: DEFAULT_KIT };

it('tells each window in the unit its number is shown in', () => {
  const kmh = speedScale('kmh', BED);
  // 1 m/s is 3.6 km/h.
  const speed = shownWindow('speed', WINDOWS, kmh, 1);
  expect(speed?.low.value).toBeCloseTo(3.6, 9);
  expect(speed?.high.value).toBeCloseTo(7.2, 9);
  expect(speed?.low.endedBy).toBe('thin');
  expect(shownWindow('elevation', WINDOWS, kmh, 1)?.high.value).toBeCloseTo(10, 9);
  expect(shownWindow('side', WINDOWS, kmh, 1)?.low.value).toBe(-0.45);
  // In tips of which three make a radius.
  expect(shownWindow('height', WINDOWS, kmh, 3)?.high.value).toBeCloseTo(0.3, 9);
});

it.each(['distance', 'cut', 'pocket', 'mouth'] as const)('has none for %s', (name) => {
  expect(shownWindow(name, WINDOWS, speedScale('mps', BED), 1)).toBeNull();
});
