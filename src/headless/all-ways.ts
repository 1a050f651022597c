import type { WayKind } from '../engine/goal/goal';
import type { NoShot, PositionShot } from '../engine/goal/position-shot';
import { shotFrom } from '../engine/goal/shot-from-position';
import { ballNamed } from '../engine/lie/balls-of';
import { findMisplaced } from '../engine/lie/misplaced';
import { comesToRest } from '../engine/motion/roll';
import { DEG_PER_RAD, wrapped } from '../engine/numerics/angle';
import type { WaysQuestion } from '../engine/ways/ways-question';
import { findPlays } from '../engine/worth/find-plays';
import type { PlaysFound } from '../engine/worth/plays-order';
import type { PlaysRule } from '../engine/worth/plays-work';
import type { Play, WorthyWay } from '../engine/worth/worthy-ways';
import { noShotWords, tableRefusalWords } from '../words/no-shot-words';
import { NO_SAFETY_WORDS, noWayWords } from '../words/no-way-words';
import type { OptionsRequest } from './options-request';
import { toldSafety, toldWorth } from './told-play';
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

/** Looks for all ways to play a position, in the order asked for; or tells why none can be. */
export function allWays(request: OptionsRequest): object {
  const { most, play } = request;
  const { kinds, isPicked: keepsLow, order, hasSafeties } = play;
  const found = searched(request, kinds, { most, keepsLow, order, hasSafeties });
  const compared = found.found.length;
  return toldPlays({ ...found, compared, shot: straightShot(request), hasSafeties });
}

/** A search for ways of some kinds, to its end. */
export function searched(
  request: OptionsRequest,
  kinds: readonly WayKind[],
  rule: PlaysRule,
): PlaysFound {
  const search = findPlays(askedOf(request, kinds), rule);
  let news = search.next();
  while (news.done !== true) news = search.next();
  return news.value;
}

/** What is asked of a table with balls. */
export function askedOf(
  { balls: position, shape, kit, spread, profile, zone, play }: OptionsRequest,
  kinds: readonly WayKind[],
): WaysQuestion {
  const { ball, pocket, legal } = play;
  return { position, shape, kit, spread, profile, legal, kinds, ball, pocket, zone };
}

/** The straight shot, where one ball and one pocket are named, and there is one. */
function straightShot({ balls, shape, kit, play }: OptionsRequest): PositionShot | null {
  const { ball, pocket } = play;
  if (ball === null || pocket === null) return null;
  const shot = shotFrom(balls, { kind: 'pot', ball, pocket, via: [] }, shape, kit);
  return shot.ok ? shot : null;
}

/** What was looked for, and why there is none of some kinds. */
export function toldPlays({
  shot,
  compared,
  plays,
  none,
  hasSafeties,
}: Omit<PlaysFound, 'found'> & {
  readonly compared: number;
  readonly shot: PositionShot | null;
  readonly hasSafeties: boolean;
}): object {
  const words = [...none.map(noWayWords), ...(hasSafeties ? [NO_SAFETY_WORDS] : [])];
  return {
    ok: true,
    shot: shot && toldShot(shot),
    compared,
    ways: plays.map(toldPlay),
    none: none.map((no) => ({ ...no, message: noWayWords(no) })),
    ...(plays.length === 0 ? { message: [...new Set(words)].join(' ') } : {}),
  };
}

function toldPlay(play: Play): object {
  return 'struck' in play ? toldSafety(play) : toldWay(play);
}

function toldWay(way: WorthyWay): object {
  const { goal, headingRad, doubleKiss, shot, fullerSide, asTold, worth, slope, ...ranked } = way;
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
    ...toldWorth(worth),
  };
}
