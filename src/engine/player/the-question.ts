import { DEFAULT_KIT, type Kit } from '../kit/kit';
import type { KitSpread } from '../kit/kit-spread';
import { RAD_PER_DEG } from '../numerics/angle';
import { chanceOf } from '../room/chance';
import { PLAYER_PRIOR, strokeByRule } from './player-rule';
import { type AskedShot, type ShotLine, shotLine } from './shot-line';

/**
 * The shot that a player is asked about: an object ball on the centre spot of a nine-foot table, the
 * cue ball two feet behind it, straight into a corner, medium, struck in the centre.
 *
 * @returns the shot on a kit whose slope is left out: nobody says how the table lies
 */
export function questionShot(kit: Kit, spread: KitSpread): AskedShot {
  const level = { ...kit, bedSlope: DEFAULT_KIT.bedSlope };
  return {
    shot: {
      distanceM: TWO_FEET_M - 2 * kit.ballRadiusM,
      cutRad: 0,
      side: 0,
      height: 0,
      elevationRad: 3 * RAD_PER_DEG,
      speedMps: 1.8,
    },
    target: { kind: 'mouth', distanceM: TO_CORNER_M, mouthM: CORNER_MOUTH_M },
    kit: level,
    spread,
  };
}

const TWO_FEET_M = 0.6096;
/** From the centre spot to a corner pocket's mouth (WPA equipment specification). */
const TO_CORNER_M = 1.4;
const CORNER_MOUTH_M = 0.116;

/** Players from beyond a professional to beyond a beginner, in prior deviations of their level. */
const LEVELS = Array.from({ length: 15 }, (_, index) => -3.5 + index / 2);

/** How often players make the question's shot, by level; null where the shot has no answer. */
export interface QuestionChances {
  readonly line: ShotLine;
  /** The chance of players at a level, in prior deviations, by the engine's own quadrature. */
  shareAt(level: number): number;
}

export function questionChances(kit: Kit, spread: KitSpread): QuestionChances | null {
  const line = shotLine(questionShot(kit, spread));
  if (line === null) return null;
  const shares = LEVELS.map((level) => {
    const directionRad = PLAYER_PRIOR.directionRad * Math.exp(PLAYER_PRIOR.directionSd * level);
    return chanceOf(line.task, line.kit, line.stroke, strokeByRule(directionRad), spread).share;
  });
  return { line, shareAt: (level) => between(shares, (level + 3.5) * 2) };
}

/** Between the values of a list, by straight lines; beyond its ends, that of the end. */
function between(values: readonly number[], at: number): number {
  const place = Math.min(values.length - 1, Math.max(0, at));
  const low = Math.floor(place);
  const [from = 0, to = from] = [values[low], values[low + 1]];
  return from + (place - low) * (to - from);
}
