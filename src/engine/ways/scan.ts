import { strike } from '../impacts/strike';
import { ballNamed, placeOf, without } from '../lie/balls-of';
import { leastElevation } from '../lie/least-elevation';
import { bearing, wrapped } from '../numerics/angle';
import type { Stroke } from '../stroke/stroke';
import type { BaseStroke } from './base-strokes';
import { type LegFilter, type Sample, sampleAt } from './sample';
import type { WaysAsked } from './ways-question';

/** Looks across a ball from edge to edge, and a little beyond for what swerve adds. */
const ACROSS = 32;
const BEYOND = 1.1;
/** A raised cue bends the path: so much farther out on either side is looked as well, rad each R of side. */
const BENT_RAD = 1.2;
/** Looks all around for kicks. */
const AROUND = 240;
/** How often what lies between two looks is halved, at most. */
const MOST_HALVINGS = 3;
/** A ball that sets off so much elsewhere at the next look is looked at in between, rad. */
const WIDE_RAD = 0.5;

/** The cue pointed across a ball, so that the cue ball meets it everywhere from edge to edge. */
export function scanAcross(
  asked: WaysAsked,
  ball: number,
  base: BaseStroke,
  filter: LegFilter,
): readonly Sample[] {
  return refined(asked, base, headingsAcross(asked, ball, base), filter);
}

/** Directions of the cue over the table by which the cue ball meets a ball from edge to edge, rad. */
export function headingsAcross(
  asked: WaysAsked,
  ball: number,
  base: BaseStroke,
): readonly number[] {
  const { position, kit } = asked.question;
  const [cueBall, struck] = [ballNamed(position, 'cue'), ballNamed(position, ball)];
  if (cueBall === null || struck === null) return [];
  const [dx, dy] = [struck.xM - cueBall.xM, struck.yM - cueBall.yM];
  const share = Math.min(1, (2 * kit.ballRadiusM) / Math.hypot(dx, dy));
  const bentRad = base.raisedRad === undefined ? 0 : BENT_RAD * Math.abs(base.side);
  const middleRad = bearing(dx, dy) - squirtOf(asked, base);
  return Array.from({ length: ACROSS }, (_, at) => {
    const across = BEYOND * (2 * (at / (ACROSS - 1)) - 1);
    return middleRad + Math.sign(across) * asinOf(Math.abs(across) * share) + across * bentRad;
  });
}

/** Beyond a right angle as far as it is beyond 1. */
function asinOf(share: number): number {
  return share <= 1 ? Math.asin(share) : Math.PI / 2 + (share - 1);
}

/** The cue pointed all around. */
export function scanAround(
  asked: WaysAsked,
  base: BaseStroke,
  filter: LegFilter,
): readonly Sample[] {
  return refined(asked, base, headingsAround(), filter);
}

/** All directions of the cue, evenly; the first is the last, rad. */
export function headingsAround(): readonly number[] {
  return Array.from({ length: AROUND + 1 }, (_, at) => -Math.PI + (2 * Math.PI * at) / AROUND);
}

function refined(
  asked: WaysAsked,
  base: BaseStroke,
  headings: readonly number[],
  filter: LegFilter,
): readonly Sample[] {
  const look = (headingRad: number) => sampleAt(asked, strokeAt(asked, base, headingRad), filter);
  let before: Sample | null = null;
  const all: Sample[] = [];
  for (const heading of headings) {
    const here = look(heading);
    if (before !== null) all.push(...between(look, before, here, MOST_HALVINGS));
    all.push(here);
    before = here;
  }
  return all;
}

function between(
  look: (headingRad: number) => Sample,
  one: Sample,
  other: Sample,
  halvings: number,
): readonly Sample[] {
  if (halvings === 0 || !areApart(one, other)) return [];
  const middle = look((one.headingRad + other.headingRad) / 2);
  return [
    ...between(look, one, middle, halvings - 1),
    middle,
    ...between(look, middle, other, halvings - 1),
  ];
}

/** Whether more may happen between two looks than at either. */
function areApart({ legs }: Sample, other: Sample): boolean {
  if (legs.size !== other.legs.size) return true;
  for (const [key, { state }] of legs) {
    const there = other.legs.get(key)?.state;
    if (there === undefined) return true;
    const turnRad = bearing(state.vx, state.vy) - bearing(there.vx, there.vy);
    if (Math.abs(wrapped(turnRad)) > WIDE_RAD) return true;
  }
  return false;
}

/** A stroke with the cue as level as what lies behind the cue ball lets it be, if it is not to be raised. */
export function strokeAt({ question }: WaysAsked, base: BaseStroke, headingRad: number): Stroke {
  const { position, shape, kit } = question;
  const cueBall = ballNamed(position, 'cue');
  const leastRad =
    cueBall === null
      ? 0
      : leastElevation(placeOf(cueBall), headingRad, without(position, 'cue'), shape, kit, base)
          .elevationRad;
  const { side, height, speedMps } = base;
  return {
    side,
    height,
    speedMps,
    aimRad: wrapped(headingRad),
    elevationRad: Math.max(leastRad, base.raisedRad ?? 0),
  };
}

/** How far right of the cue's direction the cue ball leaves the tip, rad. */
function squirtOf({ question }: WaysAsked, base: BaseStroke): number {
  const { vx, vy } = strike({ ...base, aimRad: 0, elevationRad: 0 }, question.kit);
  return bearing(vx, vy);
}
