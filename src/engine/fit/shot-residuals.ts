import type { Kit } from '../kit/kit';
import { slopeSeenAlong } from '../kit/kit-along';
import { kitMoved } from '../kit/kit-spread';
import { comesToRest } from '../motion/roll';
import type { Stroke } from '../stroke/stroke';
import { type FitLayout, unknownsOf } from './fit-layout';
import { type FitShot, PLAYER_SPREAD } from './fit-question';
import type { ReadingSpec, Readings } from './trials/trial';
import { TRIALS } from './trials/trials';

/** How the stroke strayed, in standard deviations: direction, side, height, elevation, speed. */
export type Strays = readonly number[];
export const STRAYS = 5;
export const NO_STRAYS: Strays = [0, 0, 0, 0, 0];

/** What was read less what would be, each over the reading's standard deviation; null: no reading. */
export type ResidualsAt = (unknowns: readonly number[], strays: Strays) => readonly number[] | null;

/** A shot as the fit sees it. */
export interface ShotResiduals {
  /** The unknowns it hangs on, by their place in the layout. */
  readonly touches: readonly number[];
  /** How many readings it has. */
  readonly readings: number;
  readonly at: ResidualsAt;
}

/** Builds the residuals of the readings that a shot has. */
export function shotResiduals(fitShot: FitShot, layout: FitLayout): ShotResiduals {
  const { shot, readings } = fitShot;
  const trial = TRIALS[shot.trial];
  const taken = trial.readings.flatMap((spec) => {
    const read = readings[spec.name];
    return read === undefined ? [] : [{ name: spec.name, miss: missFrom(read, spec) }];
  });
  const played = playing(fitShot, layout);
  const at: ResidualsAt = (unknowns, strays) => {
    const { kit, stroke } = played(unknowns, strays);
    const predicted = comesToRest(kit) ? trial.predict(kit, stroke, shot.setup) : null;
    return predicted && taken.map(({ name, miss }) => miss(predicted[name] ?? Number.NaN));
  };
  return { touches: touchedBy(at, layout.unknowns.length), readings: taken.length, at };
}

/** How far a reading lies above what would be, in standard deviations of the reading. */
function missFrom(read: number, { sd, isShare }: ReadingSpec): (predicted: number) => number {
  const readSd = isShare ? sd * Math.abs(read) : sd;
  return (predicted) => (read - predicted) / readSd;
}

/** What the readings of a shot would be at some values of the unknowns; null: nothing to read. */
export function predictedReadings(
  fitShot: FitShot,
  layout: FitLayout,
  unknowns: readonly number[],
): Readings | null {
  const { kit, stroke } = playing(fitShot, layout)(unknowns, NO_STRAYS);
  if (!comesToRest(kit)) return null;
  return TRIALS[fitShot.shot.trial].predict(kit, stroke, fitShot.shot.setup);
}

/** Puts unknowns and strays into a shot's kit and stroke. */
function playing(fitShot: FitShot, layout: FitLayout) {
  const { headingRad, ...meant } = fitShot.shot.stroke;
  const { kit: prior, spread } = fitShot.prior;
  const { directionRad, tipM, elevationRad, speedShare } = fitShot.scatter;
  const places = unknownsOf(fitShot, layout);
  const tip = tipM / (prior.ballRadiusM + prior.tipRadiusM);
  const speedSpread = meant.speedWord === null ? 0 : PLAYER_SPREAD[meant.speedWord];
  const kitAt = keepingLast((unknowns) => {
    let kit = prior;
    for (const { quantity, index } of places.kit) {
      const sds = unknowns[index] ?? 0;
      if (sds !== 0) kit = kitMoved(kit, spread, quantity, sds);
    }
    return { ...kit, bedSlope: slopeSeenAlong(kit.bedSlope, headingRad) };
  });
  return (unknowns: readonly number[], strays: Strays): { kit: Kit; stroke: Stroke } => {
    const at = (index: number) => unknowns[index] ?? 0;
    const [direction = 0, side = 0, height = 0, elevation = 0, speed = 0] = strays;
    const stroke = {
      aimRad: PLAYER_SPREAD.aimBias * at(places.aimBias) + directionRad * direction,
      side: meant.side + tip * side,
      height: meant.height + tip * height,
      // A cue cannot go below the cloth: what would is as far above it.
      elevationRad: Math.abs(meant.elevationRad + elevationRad * elevation),
      speedMps: meant.speedMps * Math.exp(speedSpread * at(places.speed) + speedShare * speed),
    };
    return { kit: kitAt(unknowns), stroke };
  };
}

/** Strays are tried by the dozen on one kit: it is made once for them all. */
function keepingLast(kitAt: (unknowns: readonly number[]) => Kit) {
  let last: { unknowns: readonly number[]; kit: Kit } | null = null;
  return (unknowns: readonly number[]): Kit => {
    if (last?.unknowns !== unknowns) last = { unknowns, kit: kitAt(unknowns) };
    return last.kit;
  };
}

/** A step that no dependence survives unseen, in prior standard deviations. */
const PROBE = 0.37;

/** The unknowns that make any difference: found by moving each, so that no trial need declare them. */
function touchedBy(at: ResidualsAt, count: number): readonly number[] {
  const none = new Array<number>(count).fill(0);
  const base = at(none, NO_STRAYS);
  return none.flatMap((_, index) => {
    const moved = at(withAt(none, index, PROBE), NO_STRAYS);
    return base && moved?.every((value, row) => value === base[row]) ? [] : [index];
  });
}

/** A copy of a list with one number in another's place. */
export function withAt(list: readonly number[], index: number, value: number): number[] {
  const copy = [...list];
  copy[index] = value;
  return copy;
}
