import { READING_NAMES, READING_RANGES, type Readings } from '../engine/fit/trial-shot';
import { isWithin } from '../engine/numerics/range';
import type { ButtReading } from './attempt';
import { isPlainObject, type Mend, mendNumber, mendObject, mendOrNone } from './mend';
import { BUTT_RANGES } from './record-ranges';

/**
 * Leaves out every reading that cannot have been read. None is ever moved into range: that would be
 * inventing one. Readings of other names are kept for the version that knows them.
 */
export const mendReadings: Mend<Readings> = (was, field, note) => {
  if (!isPlainObject(was)) {
    note(field, was, {});
    return {};
  }
  const kept: Record<string, unknown> = { ...was };
  for (const name of READING_NAMES) {
    if (!(name in kept) || isWithin(READING_RANGES[name], kept[name])) continue;
    note(`${field}.${name}`, kept[name], undefined);
    delete kept[name];
  }
  return kept;
};

/** A butt higher than its cue is long was misread. */
function canHaveBeenRead(was: unknown): boolean {
  if (!isPlainObject(was)) return false;
  const { buttHeightM, cueLengthM } = was;
  return (
    isWithin(BUTT_RANGES.buttHeightM, buttHeightM) &&
    isWithin(BUTT_RANGES.cueLengthM, cueLengthM) &&
    buttHeightM < cueLengthM
  );
}

/** Leaves out a measured elevation that cannot have been read; it is then as it was meant. */
export const mendButt: Mend<ButtReading | null> = mendOrNone(
  canHaveBeenRead,
  mendObject<ButtReading>({
    buttHeightM: mendNumber(BUTT_RANGES.buttHeightM, 0),
    cueLengthM: mendNumber(BUTT_RANGES.cueLengthM, 0),
  }),
);
