import type { WayKind } from '../engine/goal/goal';
import type { NoShot, PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { ballNamed } from '../engine/lie/balls-of';
import { findMisplaced } from '../engine/lie/misplaced';
import { comesToRest } from '../engine/motion/roll';
import { DEG_PER_RAD, wrapped } from '../engine/numerics/angle';
import { findWays } from '../engine/ways/find-ways';
import type { PickRule } from '../engine/ways/pick-ways';
import type { ToldWay } from '../engine/ways/refine-found';
import type { WaysFound } from '../engine/ways/ways-order';
import { noShotWords, tableRefusalWords } from '../words/no-shot-words';
import { noWayWords } from '../words/no-way-words';
import type { OptionsRequest } from './options-request';
import { toldRanked, toldShot } from './told-way';

/** Why nothing can be played where the balls lie, or on this bed; null where it can. */
export function unplayable({ balls, shape, kit, play: { ball } }: OptionsRequest): object | null {
  const misplaced = findMisplaced(balls, shape, kit);
  if (misplaced !== null) return toldNoShot({ ok: false, ...misplaced });
  if (ball !== null && ballNamed(balls, ball) === null) {
    return toldNoShot({ ok: false, reason: 'no-such-ball', ball });
  }
  if (comesToRest(kit)) return null;
  const refusal = { ok: false, reason: 'never-stops' } as const;
  return { ...refusal, ...tableRefusalWords(refusal) };
}

function toldNoShot(none: NoShot): object {
  return { ok: false, reason: none.reason, ...noShotWords(none) };
}

/** Looks for all ways to play a position, the easiest first; or tells why none goes. */
export function allWays(request: OptionsRequest): object {
  const { most, play } = request;
  const found = searched(request, play.kinds, { most, keepsLow: play.isPicked });
  return toldWays({ ...found, compared: found.found.length, shot: straightShot(request) });
}

/** A search for ways of some kinds, to its end. */
export function searched(
  { balls: position, shape, kit, spread, profile, zone, play }: OptionsRequest,
  kinds: readonly WayKind[],
  rule: PickRule,
): WaysFound {
  const { ball, pocket, legal } = play;
  const question = { position, shape, kit, spread, profile, legal, kinds, ball, pocket, zone };
  const search = findWays(question, rule);
  let news = search.next();
  while (news.done !== true) news = search.next();
  return news.value;
}

/** The straight shot, where one ball and one pocket are named, and there is one. */
function straightShot({ balls, shape, kit, play }: OptionsRequest): PositionShot | null {
  const { ball, pocket } = play;
  if (ball === null || pocket === null) return null;
  const shot = shotFrom(balls, { kind: 'pot', ball, pocket, via: [] }, shape, kit);
  return shot.ok ? shot : null;
}

/** Ways of every kind that were looked for, and why there is none of some. */
export function toldWays({
  shot,
  compared,
  ways,
  none,
}: Omit<WaysFound, 'found'> & {
  readonly compared: number;
  readonly shot: PositionShot | null;
}): object {
  return {
    ok: true,
    shot: shot && toldShot(shot),
    compared,
    ways: ways.map(toldWay),
    none: none.map((no) => ({ ...no, message: noWayWords(no) })),
    ...(ways.length === 0 ? { message: [...new Set(none.map(noWayWords))].join(' ') } : {}),
  };
}

function toldWay(way: ToldWay): object {
  const { goal, headingRad, doubleKiss, shot, fullerSide, ...ranked } = way;
  const { kind, ball, pocket, via } = goal;
  return {
    ...toldRanked(ranked),
    kind,
    ball,
    pocket,
    via,
    headingDeg: wrapped(headingRad + ranked.option.stroke.aimRad) * DEG_PER_RAD,
    doubleKiss,
    ...(shot === null ? { shot: null, aimAngleDeg: null } : { shot: toldShot(shot) }),
  };
}
