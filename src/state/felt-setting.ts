import { kitOf } from '../store/kit-of';
import type { ShelfName, Shelves } from '../store/records';
import type { FeltSetting } from '../units/felt-figures';
import type { Records } from './measure/parts-played';

/** What a record's figures are told of: the kit in play with that record in its place. */
export function feltSetting<S extends ShelfName>(
  inPlay: Records,
  shelf: S,
  record: Shelves[S],
): FeltSetting {
  const { cues, cloths, balls, tables }: Records = { ...inPlay, [shelf]: record };
  return {
    kit: kitOf(cues, cloths, balls, tables),
    tipDiameterM: cues.tipDiameterM,
    tableLengthM: tables.lengthM,
  };
}
