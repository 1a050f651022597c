import { strike } from '../impacts/strike';
import { isLevel, type Kit } from '../kit/kit';
import { slopeSeenAlong } from '../kit/kit-along';
import { travel } from '../motion/journey';
import type { Phase } from '../motion/phase';
import { missOf, play } from './contact';
import { ContactProber } from './contact-probe';
import { contactRoots } from './contact-roots';
import type { Layout } from './layout';
import { type Shot, strokeOf } from './shot';
import { type RootsUnder, tiltedAims } from './tilted-aims';

/**
 * The cue ball's whole run with nothing in its way, in the frame of the cue: from the origin, the
 * cue along y. On a level bed it is the same for every aim.
 *
 * @param aimRad where the cue points on the table: it says how a tilted bed lies under the path
 */
export function freePath(shot: Shot, kit: Kit, aimRad: number): readonly Phase[] {
  const { side, height, elevationRad, speedMps } = shot;
  const turnedKit = { ...kit, bedSlope: slopeSeenAlong(kit.bedSlope, aimRad) };
  const leaving = strike({ aimRad: 0, side, height, elevationRad, speedMps }, turnedKit);
  return travel(leaving, 0, turnedKit, []).phases;
}

/** Aims whose path holds a contact that sends the object ball along the target line, unordered. */
export function candidateAims(shot: Shot, layout: Layout, kit: Kit): readonly number[] {
  const prober = new ContactProber(layout, shot.cutRad, kit);
  const rootsUnder: RootsUnder = (aimRad) => contactRoots(freePath(shot, kit, aimRad), prober);
  if (isLevel(kit)) return rootsUnder(0);
  return tiltedAims(rootsUnder, (aimRad) =>
    missOf(play(strokeOf(shot, aimRad), layout, kit), shot.cutRad),
  );
}
