import type { RunBed } from '../../units/table-run';
import type { Models } from '../app-models';

/** The cloth and table in play, on which runs are told. */
export function bedOf({ current, kit }: Models<'kit'>['kit']): RunBed {
  return { tableLengthM: current.tables.value.lengthM, kit: kit.value };
}
