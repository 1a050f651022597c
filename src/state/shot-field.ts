import type { Range } from '../engine/numerics/range';
import type { LaidShot, Pocket, Preferences } from '../store/records';
import type { Parsed } from '../units/parsed';
import type { SpeedScale } from '../units/speed-unit';
import type { UnitFacts } from '../units/unit-facts';

/** All that is set by hand: the shot, and the pocket its object ball is to go into. */
export interface Asked {
  readonly shot: LaidShot;
  readonly pocket: Pocket;
}

/** What turning a field's figure into the shot and back depends on. */
export interface FieldContext {
  readonly preferences: Preferences;
  readonly tableLengthM: number;
  readonly ballRadiusM: number;
  /** Radius of the tip's dome. */
  readonly tipRadiusM: number;
  /** In the unit of speed that is shown. */
  readonly speedScale: SpeedScale;
  /** Where a cut goes: 1 right, −1 left. Kept apart, for a straight shot's cut has no sign. */
  readonly cutSign: 1 | -1;
}

/** One number as the person sees it, in the unit they chose. */
export interface ShownShotField {
  readonly facts: UnitFacts;
  readonly figure: number;
  /** What the engine accepts, in the shown unit. */
  readonly range: Range;
  /** What a slider spans: the usual part of the range. */
  readonly usual: Range;
}

/** The same, and how to change it. */
export interface ShotField extends ShownShotField {
  /** What this figure changes, as changed; refuses one that makes no shot. */
  put(figure: number): Parsed<Partial<Asked>>;
}
