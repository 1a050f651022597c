import { INPUT_RANGES } from '../engine/direct/input-ranges';
import type { LaidShot } from '../store/records';
import { ballToBallGapM, ghostBallDistanceM } from '../units/ball-to-ball';
import { DISTANCE_UNITS, distanceInM, distanceInUnit } from '../units/distance-unit';
import type { FieldContext, ShotField } from './shot-field';
import { withinShot } from './within-shot';

/** How far away the shot is, in the unit and between the points the person prefers. */
export function distanceField(shot: LaidShot, context: FieldContext): ShotField {
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
