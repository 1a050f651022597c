import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { Range } from '../engine/numerics/range';
import { MISCUE_LIMIT } from '../engine/stroke/miscue-limit';
import type { LaidShot } from '../store/records';
import { DEGREES, degreesOf, radOf } from '../units/angle-degrees';
import { tipScale } from '../units/tip-unit';
import { cutField } from './cut-field';
import { distanceField } from './distance-field';
import { mouthField, pocketDistanceField } from './pocket-fields';
import type { Asked, FieldContext, ShotField } from './shot-field';
import { withinShot } from './within-shot';

/** The numbers a person sets. The cut's size is set apart from its side. */
export type FieldName =
  | 'distance'
  | 'cut'
  | 'side'
  | 'height'
  | 'elevation'
  | 'speed'
  | 'pocket'
  | 'mouth';

/** Longest usual distance and fastest usual speed, for the sliders (practice, no source). */
const USUAL_SPEED_MPS: Range = { min: 0.2, max: 5 };
const USUAL_ELEVATION_DEG: Range = { min: 0, max: 30 };

/** Reads one field of what is asked. `pocket` is how far the object ball has to go. */
export function shotField(
  name: FieldName,
  { shot, pocket }: Asked,
  context: FieldContext,
): ShotField {
  switch (name) {
    case 'distance':
      return distanceField(shot, context);
    case 'cut':
      return cutField(shot, context);
    case 'side':
    case 'height':
      return tipField(name, shot, context);
    case 'elevation':
      return elevationField(shot);
    case 'speed':
      return speedField(shot, context);
    case 'pocket':
      return pocketDistanceField(pocket, context);
    case 'mouth':
      return mouthField(pocket, context);
  }
}

const TIP_SIDES = {
  side: { plus: 'right', minus: 'left' },
  height: { plus: 'high', minus: 'low' },
} as const;

function tipField(name: 'side' | 'height', shot: LaidShot, context: FieldContext): ShotField {
  const { facts, perRadius } = tipScale(context.preferences.tipUnit, context);
  const { min, max } = INPUT_RANGES[name];
  const limit = MISCUE_LIMIT * perRadius;
  return {
    facts: { ...facts, sides: TIP_SIDES[name] },
    figure: shot[name] * perRadius,
    range: { min: min * perRadius, max: max * perRadius },
    usual: { min: -limit, max: limit },
    put: (figure) => withinShot(shot, { [name]: figure / perRadius }),
  };
}

function elevationField(shot: LaidShot): ShotField {
  const { min, max } = INPUT_RANGES.elevationRad;
  return {
    facts: DEGREES,
    figure: degreesOf(shot.elevationRad),
    range: { min: degreesOf(min), max: degreesOf(max) },
    usual: USUAL_ELEVATION_DEG,
    put: (figure) => withinShot(shot, { elevationRad: radOf(figure) }),
  };
}

function speedField(shot: LaidShot, { speedScale }: FieldContext): ShotField {
  const { facts, inUnit: figureOf, inMps } = speedScale;
  const inUnit = ({ min, max }: Range): Range => ({
    min: figureOf(min),
    max: figureOf(max),
  });
  return {
    facts,
    figure: figureOf(shot.speedMps),
    range: inUnit(INPUT_RANGES.speedMps),
    usual: inUnit(USUAL_SPEED_MPS),
    put: (figure) => withinShot(shot, { speedMps: inMps(figure) }),
  };
}
