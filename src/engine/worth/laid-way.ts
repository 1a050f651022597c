import { directCut, type Goal } from '../goal/goal';
import { isDoubleKiss, kindOfVia } from '../goal/kind-of-via';
import { shotFrom } from '../goal/shot-from-position';
import { kitAlong } from '../kit/kit-along';
import { ballNamed } from '../lie/balls-of';
import { wrapped } from '../numerics/angle';
import { questionOf } from '../plan/solve-option';
import { wayOf } from '../plan/way';
import { STROKE_RANGES, type Stroke } from '../stroke/stroke';
import { type FoundWay, tried } from '../ways/found-way';
import { playedWayOf } from '../ways/played-way';
import { askedFor, type WaysQuestion } from '../ways/ways-question';
import { tellWorthy, type WorthyWay } from './worthy-ways';

/** A way that somebody laid elsewhere: plain data. */
export interface LaidWay {
  readonly goal: Goal;
  /** Its aim is measured over the table, rad: 0 runs along y, right +. */
  readonly stroke: Stroke;
}

/** The same worked out here. */
export interface LaidTold {
  readonly told: WorthyWay;
  /** Whether the stroke, as it is meant, does here what the way says. */
  readonly does: boolean;
}

/**
 * Works a way out with the very stroke that it was laid with, whatever that does on this table and with this
 * kit. Null where no such way can be: a ball is not there, the steps are no way of that kind,
 * there is no such cut, or the engine does not take the stroke.
 */
export function tellLaid(question: WaysQuestion, { goal, stroke }: LaidWay): LaidTold | null {
  const { position } = question;
  const isThere = (name: number | 'cue') => ballNamed(position, name) !== null;
  if (!isThere('cue') || !isThere(goal.ball)) return null;
  if (kindOfVia(goal.via, goal.ball) !== goal.kind) return null;
  const asked = askedFor(question);
  const played = tried(asked, goal, stroke);
  const laid = goal.kind === 'direct' ? alongShot(question, goal, stroke) : overBed(stroke);
  if (played === null || laid === null) return null;
  const way = laid.way ?? playedWayOf(asked, stroke, played.play);
  const doubleKiss = isDoubleKiss(goal.via);
  // What a search goes by in picking is of no account: it is picked already.
  const found: FoundWay = { goal, rough: 0, missPerRad: 0, ends: 0, doubleKiss, ...laid, way };
  return { told: tellWorthy(question, found), does: played.did && played.isLegal };
}

type Lain = Pick<FoundWay, 'headingRad' | 'stroke' | 'shot'> & { readonly way?: FoundWay['way'] };

/** What is found by playing is told along the cue's own direction. */
function overBed(stroke: Stroke): Lain {
  return { headingRad: stroke.aimRad, stroke: { ...stroke, aimRad: 0 }, shot: null };
}

/** A direct cut is told along its shot's straight line. */
function alongShot(question: WaysQuestion, goal: Goal, stroke: Stroke): Lain | null {
  const { position, shape, kit, spread, profile } = question;
  const shot = shotFrom(position, directCut(goal.ball, goal.pocket), shape, kit);
  if (!shot.ok) return null;
  const { headingRad, least } = shot;
  const aimRad = wrapped(stroke.aimRad - headingRad);
  if (Math.abs(aimRad) > STROKE_RANGES.aimRad.max) return null;
  const along = { ...stroke, aimRad };
  const asked = questionOf(shot, kitAlong(kit, headingRad), spread, profile);
  return { headingRad, stroke: along, shot, way: wayOf(asked, along, least.elevationRad) };
}
