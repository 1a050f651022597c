import { computed, type ReadonlySignal } from '@preact/signals';
import { type SpeedScale, speedScale } from '../units/speed-unit';
import type { ShotPorts } from './shot-ports';

/** What speeds are shown with. */
export interface ShownSpeed {
  readonly speedScale: ReadonlySignal<SpeedScale>;
}

/** The unit in which speeds are shown, on the table and cloth in play. */
export function shownSpeed({
  desk,
  kit,
  tableLengthM,
  tableRuns,
}: Pick<ShotPorts, 'desk' | 'kit' | 'tableLengthM' | 'tableRuns'>): ReadonlySignal<SpeedScale> {
  return computed(() => {
    const bed = { tableLengthM: tableLengthM.value, kit: kit.value };
    const { speedUnit } = desk.preferences.value;
    return speedScale(speedUnit, bed, speedUnit === 'lengths' ? tableRuns.value : null);
  });
}
