import { type HeldShot, missOfStroke, type StrokeInputs } from '../goal/held-shot';
import { didGo, playOn, type TableScene } from '../goal/table-scene';
import { allowedRad } from '../goal/target';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import { drawnInputs, turnedBy } from '../room/drawn-inputs';
import type { StrokeProfile } from '../room/stroke-profile';
import type { TablePlay } from '../table/table-play';

const DRAWS = 48;
/** The lattice's dimension for the cue's direction, after those of the rest of the stroke. */
const DIRECTION = 4;

/** A stroke whose ball went, and how likely it is beside the others. */
export interface GoingPlay {
  readonly play: TablePlay;
  readonly weight: number;
}

/**
 * The strokes of a player who means one stroke, each played out on the whole table. They are always
 * the same, from an even lattice; a stroke with which the tip would slip is left out.
 */
export function drawnPlays(
  scene: TableScene,
  inputs: StrokeInputs,
  profile: StrokeProfile,
): readonly TablePlay[] {
  return draws(scene, inputs, profile).flatMap(({ drawn, normal }) => {
    const turned = turnedBy(scene.kit, drawn, profile, normal(DIRECTION));
    return playOn(scene, turned) ?? [];
  });
}

/**
 * The same player's strokes whose ball goes, evenly over what the target allows: of each draw the
 * cue is turned to where the ball crosses at some place of it, and how seldom it is turned so far
 * is the stroke's weight. So a shot that seldom goes is known as well as an easy one.
 */
export function goingPlays(
  scene: TableScene,
  held: HeldShot,
  inputs: StrokeInputs,
  profile: StrokeProfile,
): readonly GoingPlay[] {
  const slope = missPerSd(held, inputs, profile);
  return draws(scene, inputs, profile).flatMap(({ drawn, at }) => {
    const missAt = (sds: number) => missOfStroke(held, turnedBy(held.kit, drawn, profile, sds));
    const sds = turnTo(missAt, 2 * at(DIRECTION) - 1, slope);
    if (sds === null) return [];
    const play = playOn(scene, turnedBy(held.kit, drawn, profile, sds));
    const weight = Math.exp((-sds * sds) / 2);
    return play !== null && didGo(play, scene) ? [{ play, weight }] : [];
  });
}

function draws(scene: TableScene, inputs: StrokeInputs, profile: StrokeProfile) {
  return Array.from({ length: DRAWS }, (_, draw) => {
    const at = (dimension: number) => latticePoint(draw, dimension, 0);
    const normal = (dimension: number) => normalQuantile(at(dimension));
    return { drawn: drawnInputs(scene.kit, inputs, profile, normal), at, normal };
  });
}

/** A step along the direction, in standard deviations, for a slope. */
const LOOK = 0.02;

/** By the ball's direction, so that it hangs on no ball that only just gets there. */
function missPerSd(held: HeldShot, inputs: StrokeInputs, profile: StrokeProfile): number {
  const halfAngleRad = allowedRad(held.target, held.kit.ballRadiusM);
  const byAngle: HeldShot = { ...held, target: { kind: 'angle', halfAngleRad } };
  const [less, more] = [-LOOK, LOOK].map((sds) =>
    missOfStroke(byAngle, turnedBy(held.kit, inputs, profile, sds)),
  );
  return typeof less === 'number' && typeof more === 'number'
    ? (more - less) / (2 * LOOK)
    : Number.NaN;
}

/** As a share of what the target allows: nearer than this is there. */
const NEAR = 0.05;
const MOST_STEPS = 5;
/** Further than this, in standard deviations, nobody turns the cue by chance. */
const MOST_SDS = 4;

/** The turn, in standard deviations, at which the miss is as wanted; null where none is found. */
function turnTo(
  missAt: (sds: number) => number | string,
  wanted: number,
  slope: number,
): number | null {
  let sds = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const miss = missAt(sds);
    if (typeof miss !== 'number') return null;
    if (Math.abs(miss - wanted) < NEAR) return sds;
    sds += (wanted - miss) / slope;
    if (!(Math.abs(sds) <= MOST_SDS)) return null;
  }
  return null;
}
