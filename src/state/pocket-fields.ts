import { heldWithin } from '../engine/numerics/range';
import { POCKET_RANGES } from '../store/record-ranges';
import type { Pocket } from '../store/records';
import { DISTANCE_UNITS, distanceInM, distanceInUnit } from '../units/distance-unit';
import { LENGTH_UNITS, lengthInM, lengthInUnit } from '../units/length-unit';
import type { UnitFacts } from '../units/unit-facts';
import type { FieldContext, ShotField } from './shot-field';

/** How far the object ball has to go, in the unit of distances. */
export function pocketDistanceField(pocket: Pocket, context: FieldContext): ShotField {
  const { tableLengthM, preferences } = context;
  const unit = preferences.distanceUnit;
  return pocketField(pocket, 'distanceM', DISTANCE_UNITS[unit], tableLengthM, {
    inUnit: (lengthM) => distanceInUnit(lengthM, unit, tableLengthM),
    inM: (figure) => distanceInM(figure, unit, tableLengthM),
  });
}

/** How wide the pocket's mouth is, in the unit of sideways figures. */
export function mouthField(pocket: Pocket, { preferences }: FieldContext): ShotField {
  const unit = preferences.lengthUnit;
  return pocketField(pocket, 'mouthM', LENGTH_UNITS[unit], USUAL_MOUTH_M, {
    inUnit: (lengthM) => lengthInUnit(lengthM, unit),
    inM: (figure) => lengthInM(figure, unit),
  });
}

/** Wider than any side pocket (127-130 mm, WPA); a slider over more would be too coarse. */
const USUAL_MOUTH_M = 0.15;

interface Conversion {
  inUnit(lengthM: number): number;
  inM(figure: number): number;
}

function pocketField(
  pocket: Pocket,
  part: keyof Pocket,
  facts: UnitFacts,
  usualMaxM: number,
  { inUnit, inM }: Conversion,
): ShotField {
  const { min, max } = POCKET_RANGES[part];
  return {
    facts,
    figure: inUnit(pocket[part]),
    range: { min: inUnit(min), max: inUnit(max) },
    usual: { min: inUnit(min), max: inUnit(usualMaxM) },
    put(figure) {
      // A conversion may leave a bound by its last digit.
      const heldM = heldWithin(POCKET_RANGES[part], inM(figure));
      return { ok: true, value: { pocket: { ...pocket, [part]: heldM } } };
    },
  };
}
