import { didGo, playOn, type Scene } from '../goal/scene';
import { missAt, type Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { latticePoint } from '../numerics/lattice';
import { normalQuantile } from '../numerics/normal';
import { asSquirting, drawnStroke, inPlay, turnedBy } from '../room/drawn-stroke';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Stroke } from '../stroke/stroke';
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
  asked: Scene,
  task: Task,
  meant: Stroke,
  player: StrokeProfile,
): readonly TablePlay[] {
  const { stroke, profile, kit } = inPlay(meant, player, asked.kit, task.thinSide);
  const scene = { ...asked, kit };
  return draws(scene, stroke, profile).flatMap(({ drawn, normal }) => {
    const turned = turnedBy(scene.kit, drawn, profile, normal(DIRECTION));
    return playOn(scene, turned, { endsOnly: true }) ?? [];
  });
}

/**
 * The same player's strokes whose ball goes, evenly over what the target allows: of each draw the
 * cue is turned to where the ball crosses at some place of it, and how seldom it is turned so far
 * is the stroke's weight. So a shot that seldom goes is known as well as an easy one.
 */
export function goingPlays(
  asked: Scene,
  task: Task,
  known: Kit,
  meant: Stroke,
  player: StrokeProfile,
): readonly GoingPlay[] {
  const { stroke, profile, kit } = inPlay(meant, player, known, task.thinSide);
  const scene = { ...asked, kit: asSquirting(asked.kit, player) };
  const slope = missPerSd(task, kit, stroke, profile);
  return draws(scene, stroke, profile).flatMap(({ drawn, at }) => {
    const missOf = (sds: number) => missAt(task, kit, turnedBy(kit, drawn, profile, sds));
    const sds = turnTo(missOf, 2 * at(DIRECTION) - 1, slope);
    if (sds === null) return [];
    const play = playOn(scene, turnedBy(kit, drawn, profile, sds), { endsOnly: true });
    const weight = Math.exp((-sds * sds) / 2);
    return play !== null && didGo(play, scene) ? [{ play, weight }] : [];
  });
}

function draws(scene: Scene, stroke: Stroke, profile: StrokeProfile) {
  return Array.from({ length: DRAWS }, (_, draw) => {
    const at = (dimension: number) => latticePoint(draw, dimension, 0);
    const normal = (dimension: number) => normalQuantile(at(dimension));
    return { drawn: drawnStroke(scene.kit, stroke, profile, normal), at, normal };
  });
}

/** A step along the direction, in standard deviations, for a slope. */
const LOOK = 0.02;

/** By the ball's direction, so that it hangs on no ball that only just gets there. */
function missPerSd(task: Task, kit: Kit, stroke: Stroke, profile: StrokeProfile): number {
  const [less, more] = [-LOOK, LOOK].map((sds) => {
    const directionRad = task.directionAt(kit, turnedBy(kit, stroke, profile, sds));
    return typeof directionRad === 'number' ? directionRad / task.allowedRad : directionRad;
  });
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
  missOf: (sds: number) => number | string,
  wanted: number,
  slope: number,
): number | null {
  let sds = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const miss = missOf(sds);
    if (typeof miss !== 'number') return null;
    if (Math.abs(miss - wanted) < NEAR) return sds;
    sds += (wanted - miss) / slope;
    if (!(Math.abs(sds) <= MOST_SDS)) return null;
  }
  return null;
}
