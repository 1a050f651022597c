import type { Goal } from '../engine/goal/goal';
import { shotFrom } from '../engine/goal/shot-from-position';
import { ballNamed } from '../engine/lie/balls-of';
import { findMisplaced } from '../engine/lie/misplaced';
import { comesToRest } from '../engine/motion/roll';
import { DEG_PER_RAD, wrapped } from '../engine/numerics/angle';
import { findWays } from '../engine/ways/find-ways';
import type { ToldWay } from '../engine/ways/refine-found';
import type { WaysQuestion } from '../engine/ways/ways-question';
import { whyNone } from '../engine/ways/why-none';
import { noShotWords, tableRefusalWords } from '../words/no-shot-words';
import { noWayWords } from '../words/no-way-words';
import type { OptionsRequest } from './options-request';
import { toldRanked, toldShot } from './told-way';

/** Looks for all ways to play a position, the easiest first; or tells why none can be. */
export function allWays(request: OptionsRequest): object {
  const { balls: position, shape, kit, spread, profile, zone, most, play } = request;
  const { ball, pocket, legal, kinds } = play;
  const misplaced = findMisplaced(position, shape, kit);
  if (misplaced !== null)
    return { ok: false, reason: misplaced.reason, ...noShotWords({ ok: false, ...misplaced }) };
  if (ball !== null && ballNamed(position, ball) === null) {
    const none = { ok: false, reason: 'no-such-ball', ball } as const;
    return { ok: false, reason: none.reason, ...noShotWords(none) };
  }
  if (!comesToRest(kit)) {
    const refusal = { ok: false, reason: 'never-stops' } as const;
    return { ...refusal, ...tableRefusalWords(refusal) };
  }
  const question = { position, shape, kit, spread, profile, legal, kinds, ball, pocket, zone };
  const { ways, compared, parts } = ended(question, most, play.isPicked);
  const none = whyNone(question, parts);
  return {
    ok: true,
    shot: shotOf(request),
    compared,
    ways: ways.map(toldFound),
    none: none.map((no) => ({ ...no, message: noWayWords(no) })),
    ...(ways.length === 0 ? { message: [...new Set(none.map(noWayWords))].join(' ') } : {}),
  };
}

function ended(question: WaysQuestion, most: number, keepsLow: boolean) {
  const search = findWays(question, { most, keepsLow });
  let news = search.next();
  while (news.done !== true) news = search.next();
  return news.value;
}

/** The straight shot, where one ball and one pocket are named, and there is one. */
function shotOf({ balls, shape, kit, play: { ball, pocket } }: OptionsRequest): object | null {
  if (ball === null || pocket === null) return null;
  const shot = shotFrom(balls, { kind: 'pot', ball, pocket, via: [] }, shape, kit);
  return shot.ok ? toldShot(shot) : null;
}

function toldFound({ goal, headingRad, doubleKiss, shot, fullerSide, ...ranked }: ToldWay): object {
  const headings = { goal, headingRad, doubleKiss };
  const told = { ...toldRanked(ranked), ...toldGoal(headings, ranked.option.stroke.aimRad) };
  return shot === null
    ? { ...told, shot: null, aimAngleDeg: null }
    : { ...told, shot: toldShot(shot) };
}

/** What a way does, and where the cue points. */
export function toldGoal(
  {
    goal,
    headingRad,
    doubleKiss,
  }: Pick<ToldWay, 'headingRad' | 'doubleKiss'> & { readonly goal: Goal },
  aimRad: number,
): object {
  const { kind, ball, pocket, via } = goal;
  return {
    kind,
    ball,
    pocket,
    via,
    headingDeg: wrapped(headingRad + aimRad) * DEG_PER_RAD,
    doubleKiss,
  };
}
