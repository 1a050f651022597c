import { strike } from '../impacts/strike';
import { isLevel, type Kit } from '../kit/kit';
import { slopeSeenAlong } from '../kit/kit-along';
import { travel } from '../motion/journey';
import type { Phase } from '../motion/phase';
import { type Run, runOf } from '../motion/run';
import { length } from '../numerics/length';
import { type Meeting, missOf } from './contact';
import { ContactProber } from './contact-probe';
import { addContactRoots } from './contact-roots';
import type { Layout } from './layout';
import { type Shot, strokeOf } from './shot';
import { type RootsUnder, tiltedAims } from './tilted-aims';

/**
 * The cue ball's run with nothing in its way, in the frame of the cue: from the origin, the cue along
 * y. On a level bed it is the same for every aim.
 *
 * @param aimRad where the cue points on the table: it says how a tilted bed lies under the path
 */
function freeRun(shot: Shot, kit: Kit, aimRad: number): Run {
  const turnedKit = aimRad === 0 ? kit : { ...kit, bedSlope: slopeSeenAlong(kit.bedSlope, aimRad) };
  return runOf(strike(strokeOf(shot, 0), turnedKit), 0, turnedKit);
}

/** The same at aim 0, whole. */
export function freePath(shot: Shot, kit: Kit): readonly Phase[] {
  return travel(strike(strokeOf(shot, 0), kit), 0, kit, []).phases;
}

/** Aims whose path holds a contact that sends the object ball along the target line, unordered. */
export function candidateAims(
  shot: Shot,
  layout: Layout,
  kit: Kit,
  meetAt: (aimRad: number) => Meeting,
): readonly number[] {
  const prober = new ContactProber(layout, shot.cutRad, kit);
  const rootsUnder: RootsUnder = (aimRad) => contactRoots(freeRun(shot, kit, aimRad), prober);
  if (isLevel(kit)) return rootsUnder(0);
  return tiltedAims(rootsUnder, (aimRad) => {
    const meeting = meetAt(aimRad);
    return { missRad: missOf(meeting, shot.cutRad), aimPerMiss: aimPerMiss(meeting, layout) };
  });
}

/**
 * By how much a straight path that meets the object ball must turn for the line of centres to turn:
 * 2R cos φ / d, φ between the two. Plane geometry; friction and swerve change it little.
 */
function aimPerMiss({ contact }: Meeting, { reachM }: Layout): number {
  if (contact === null) return Number.NaN;
  const { cueBall, nx, ny } = contact;
  const cosine = (cueBall.vx * nx + cueBall.vy * ny) / length(cueBall.vx, cueBall.vy);
  return (reachM * cosine) / length(cueBall.xM, cueBall.yM);
}

function contactRoots(run: Run, prober: ContactProber): number[] {
  const aims: number[] = [];
  while (run.next(prober)) addContactRoots(run.phase, prober, aims);
  return aims;
}
