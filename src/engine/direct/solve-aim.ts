import type { Kit } from '../kit/kit';
import { isWithin } from '../numerics/range';
import { STROKE_RANGES } from '../stroke/stroke';
import { candidateAims } from './candidate-aims';
import { checkQuery } from './check-query';
import { type Meeting, missOf, Striker } from './contact';
import { THINNEST_CUT_RAD } from './input-ranges';
import { layoutOf } from './layout';
import { answerPlay } from './play-aim';
import { refusal } from './refusal';
import { type AimResult, type Shot, strokeOf } from './shot';
import { whyNoAim } from './why-no-aim';

/**
 * How far off the target line the object ball of a played candidate may leave, rad (0.0006°). All
 * but grazes, whose first touch is the rounding of a root, come a million times nearer.
 */
const MISS_TOLERANCE = 1e-5;
/** Candidates closer than this, rad, are one aim found twice. */
const SAME_AIM = 1e-9;

/** A stroke that was played. */
interface Played {
  readonly aimRad: number;
  readonly played: Meeting;
}

/**
 * The aim that sends the object ball along the target line: of all that do, the smallest, with the
 * others told. Every candidate is played out from the strike before it counts, so an answer is
 * always a stroke that really reaches the object ball first there and goes.
 */
export function solveAim(shot: Shot, kit: Kit): AimResult {
  const problem = checkQuery(shot, kit);
  if (problem !== null) return problem;
  if (Math.abs(shot.cutRad) > THINNEST_CUT_RAD) return refusal('too-thin');
  const layout = layoutOf(shot, kit.ballRadiusM);
  const striker = new Striker(layout);
  const met: Played[] = [];
  const meetAt = (aimRad: number) => {
    const before = met.find((one) => one.aimRad === aimRad);
    if (before !== undefined) return before.played;
    const played = striker.meet(strokeOf(shot, aimRad), kit);
    met.push({ aimRad, played });
    return played;
  };
  const candidates = candidateAims(shot, layout, kit, meetAt).filter((aim) =>
    isWithin(STROKE_RANGES.aimRad, aim),
  );
  const [best, ...others] = thoseThatGo(candidates, shot.cutRad, meetAt);
  if (best === undefined) return refusal(whyNoAim(shot, layout, kit, candidates));
  const otherAims = others.map((other) => other.aimRad);
  return answerPlay(shot, layout, kit, best.aimRad, best.played, otherAims);
}

function thoseThatGo(
  candidates: readonly number[],
  cutRad: number,
  meetAt: (aimRad: number) => Meeting,
) {
  const going: Played[] = [];
  for (const aimRad of [...candidates].sort((a, b) => Math.abs(a) - Math.abs(b))) {
    if (going.some((other) => Math.abs(other.aimRad - aimRad) < SAME_AIM)) continue;
    const played = meetAt(aimRad);
    if (Math.abs(missOf(played, cutRad)) <= MISS_TOLERANCE) going.push({ aimRad, played });
  }
  return going;
}
