import { DEFAULT_KIT, type Kit } from '../kit/kit';
import type { KitSpread } from '../kit/kit-spread';
import { RAD_PER_DEG } from '../numerics/angle';
import { chanceOf } from '../room/chance';
import { levelStroke } from './player-of';
import { type AskedShot, type PlainLine, plainLine, shotLine } from './shot-line';

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

/** How often players make the question's shot, by level: plain data, of one kit and its spread. */
export interface QuestionChances {
  readonly line: PlainLine;
  /** By the engine's own quadrature, of players from beyond a professional to beyond a beginner. */
  readonly shares: readonly number[];
}

/** The chances on a kit; null where the shot has no answer there. */
export function questionChances(kit: Kit, spread: KitSpread): QuestionChances | null {
  const line = shotLine(questionShot(kit, spread));
  if (line === null) return null;
  const shares = LEVELS.map(
    (level) => chanceOf(line.task, line.kit, line.stroke, levelStroke(level), spread).share,
  );
  return { line: plainLine(line), shares };
}

/** The chance of players at a level, in prior deviations: straight between those worked out. */
export function shareAt({ shares }: QuestionChances, level: number): number {
  const place = Math.min(shares.length - 1, Math.max(0, (level + 3.5) * 2));
  const low = Math.floor(place);
  const [from = 0, to = from] = [shares[low], shares[low + 1]];
  return from + (place - low) * (to - from);
}
