import { INPUT_RANGES } from '../engine/aim/input-ranges';
import type { Shot } from '../engine/aim/shot';
import { MISCUE_LIMIT } from '../engine/model/miscue-limit';
import type { Range } from '../engine/model/range';
import type { Preferences } from '../store/records';
import { DEGREES, degreesOf, radOf } from '../units/angle-degrees';
import { ballToBallGapM, ghostBallDistanceM } from '../units/ball-to-ball';
import { CUT_UNITS, cutSizeInRad, cutSizeInUnit } from '../units/cut-unit';
import { DISTANCE_UNITS, distanceInM, distanceInUnit } from '../units/distance-unit';
import type { Parsed } from '../units/parsed';
import { SPEED_UNITS, speedInMps, speedInUnit } from '../units/speed-unit';
import { TIP_CONTACT } from '../units/tip-contact';
import type { UnitFacts } from '../units/unit-facts';

/** The numbers a person sets. The cut's size is set apart from its side. */
export type FieldName = 'distance' | 'cut' | 'side' | 'height' | 'elevation' | 'speed';

/** What turning a field's figure into the shot and back depends on. */
export interface FieldContext {
  readonly preferences: Preferences;
  readonly tableLengthM: number;
  readonly ballRadiusM: number;
  /** Where a cut goes: 1 right, −1 left. Kept apart, for a straight shot's cut has no sign. */
  readonly cutSign: 1 | -1;
}

/** One number as the person sees it, in the unit they chose. */
export interface ShotField {
  readonly facts: UnitFacts;
  readonly figure: number;
  /** What the engine accepts, in the shown unit. */
  readonly range: Range;
  /** What a slider spans: the usual part of the range. */
  readonly usual: Range;
  /** The shot with this figure; refuses one that makes no shot. */
  put(figure: number): Parsed<Shot>;
}

/** Longest usual distance and fastest usual speed, for the sliders (practice, no source). */
const USUAL_SPEED_MPS: Range = { min: 0.2, max: 5 };
const USUAL_ELEVATION_DEG: Range = { min: 0, max: 30 };

/** Reads one field of a shot. */
export function shotField(name: FieldName, shot: Shot, context: FieldContext): ShotField {
  switch (name) {
    case 'distance':
      return distanceField(shot, context);
    case 'cut':
      return cutField(shot, context);
    case 'side':
    case 'height':
      return tipField(name, shot);
    case 'elevation':
      return elevationField(shot);
    case 'speed':
      return speedField(shot, context);
  }
}

function distanceField(shot: Shot, context: FieldContext): ShotField {
  const { distanceUnit: unit, distanceFrom } = context.preferences;
  const between = distanceFrom === 'ball-to-ball';
  const { cutRad } = shot;
  const shownM = (distanceM: number) =>
    between ? gapOrDistanceM(distanceM, cutRad, context.ballRadiusM) : distanceM;
  const inUnit = (distanceM: number) =>
    distanceInUnit(shownM(distanceM), unit, context.tableLengthM);
  const { min, max } = INPUT_RANGES.distanceM;
  return {
    facts: DISTANCE_UNITS[unit],
    figure: inUnit(shot.distanceM),
    range: { min: inUnit(min), max: inUnit(max) },
    usual: { min: inUnit(min), max: inUnit(context.tableLengthM) },
    put(figure) {
      const lengthM = distanceInM(figure, unit, context.tableLengthM);
      if (!between) return withinShot(shot, { distanceM: lengthM });
      const distance = ghostBallDistanceM(lengthM, cutRad, context.ballRadiusM);
      return distance.ok ? withinShot(shot, { distanceM: distance.value }) : distance;
    },
  };
}

/** A graze has no gap to speak of in the ball-to-ball formula; there the two nearly agree. */
function gapOrDistanceM(distanceM: number, cutRad: number, ballRadiusM: number): number {
  const gap = ballToBallGapM(distanceM, cutRad, ballRadiusM);
  return gap.ok ? gap.value : distanceM;
}

function cutField(shot: Shot, context: FieldContext): ShotField {
  const unit = context.preferences.cutUnit;
  const range = unit === 'degrees' ? { min: 0, max: 90 } : { min: 0, max: 1 };
  return {
    facts: CUT_UNITS[unit],
    figure: cutSizeInUnit(shot.cutRad, unit),
    range,
    usual: range,
    put(figure) {
      const size = cutSizeInRad(figure, unit);
      return size.ok ? { ok: true, value: withCut(shot, size.value, context) } : size;
    },
  };
}

/**
 * The shot with another cut. A person who measures from ball to ball has the balls lie still while
 * the cut changes, so the way to the ghost ball changes with it.
 */
export function withCut(shot: Shot, cutSizeRad: number, context: FieldContext): Shot {
  const cutRad = cutSizeRad === 0 ? 0 : context.cutSign * cutSizeRad;
  if (context.preferences.distanceFrom === 'ghost-ball') return { ...shot, cutRad };
  const gap = ballToBallGapM(shot.distanceM, shot.cutRad, context.ballRadiusM);
  if (!gap.ok) return { ...shot, cutRad };
  const distance = ghostBallDistanceM(gap.value, cutRad, context.ballRadiusM);
  const moved = distance.ok ? withinShot(shot, { distanceM: distance.value, cutRad }) : distance;
  return moved.ok ? moved.value : { ...shot, cutRad };
}

function tipField(name: 'side' | 'height', shot: Shot): ShotField {
  const limit = { min: -MISCUE_LIMIT, max: MISCUE_LIMIT };
  return {
    facts: TIP_CONTACT,
    figure: shot[name],
    range: INPUT_RANGES[name],
    usual: limit,
    put: (figure) => withinShot(shot, { [name]: figure }),
  };
}

function elevationField(shot: Shot): ShotField {
  const { min, max } = INPUT_RANGES.elevationRad;
  return {
    facts: DEGREES,
    figure: degreesOf(shot.elevationRad),
    range: { min: degreesOf(min), max: degreesOf(max) },
    usual: USUAL_ELEVATION_DEG,
    put: (figure) => withinShot(shot, { elevationRad: radOf(figure) }),
  };
}

function speedField(shot: Shot, { preferences }: FieldContext): ShotField {
  const unit = preferences.speedUnit;
  const inUnit = ({ min, max }: Range): Range => ({
    min: speedInUnit(min, unit),
    max: speedInUnit(max, unit),
  });
  return {
    facts: SPEED_UNITS[unit],
    figure: speedInUnit(shot.speedMps, unit),
    range: inUnit(INPUT_RANGES.speedMps),
    usual: inUnit(USUAL_SPEED_MPS),
    put: (figure) => withinShot(shot, { speedMps: speedInMps(figure, unit) }),
  };
}

type Numbers = { readonly [K in keyof typeof INPUT_RANGES]?: number };

/** A conversion may leave a bound by its last digit: held to it. Relative. */
const ROUNDING = 1e-9;

/** The shot with some numbers replaced, held to what the engine accepts when off by rounding. */
function withinShot(shot: Shot, numbers: Numbers): Parsed<Shot> {
  const held: Record<string, number> = {};
  for (const key of Object.keys(numbers) as (keyof typeof INPUT_RANGES)[]) {
    const { min, max } = INPUT_RANGES[key];
    const value = numbers[key] ?? Number.NaN;
    const slack = ROUNDING * Math.max(Math.abs(min), Math.abs(max));
    if (!(value >= min - slack && value <= max + slack)) {
      return {
        ok: false,
        problem: 'out-of-domain',
        message: 'That is outside what can be played.',
      };
    }
    held[key] = Math.min(max, Math.max(min, value));
  }
  return { ok: true, value: { ...shot, ...held } };
}
