import type { Goal } from '../engine/goal/goal';
import { shotFrom } from '../engine/goal/shot-from-position';
import { ballNamed } from '../engine/lie/balls-of';
import { findMisplaced } from '../engine/lie/misplaced';
import { comesToRest } from '../engine/motion/roll';
import { DEG_PER_RAD, wrapped } from '../engine/numerics/angle';
import type { ToldWay } from '../engine/ways/refine-found';
import { type NoWay, whyNone } from '../engine/ways/why-none';
import { findPlays } from '../engine/worth/find-plays';
import type { Play, WorthyWay } from '../engine/worth/worthy-ways';
import { noShotWords, tableRefusalWords } from '../words/no-shot-words';
import { NO_SAFETY_WORDS, noWayWords } from '../words/no-way-words';
import type { OptionsRequest } from './options-request';
import { toldSafety, toldWorth } from './told-play';
import { toldRanked, toldShot } from './told-way';

/** Looks for all ways to play a position, in the order asked for; or tells why none can be. */
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
  const { isPicked: keepsLow, order, hasSafeties } = play;
  const { plays, compared, parts } = findPlays(question, { most, keepsLow, order, hasSafeties });
  const none = whyNone(question, parts);
  return {
    ok: true,
    shot: shotOf(request),
    compared,
    ways: plays.map(toldPlay),
    none: none.map((no) => ({ ...no, message: noWayWords(no) })),
    ...(plays.length === 0 ? { message: noneWords(none, hasSafeties) } : {}),
  };
}

/** Why there is nothing on the list. */
function noneWords(none: readonly NoWay[], hasSafeties: boolean): string {
  const words = [...none.map(noWayWords), ...(hasSafeties ? [NO_SAFETY_WORDS] : [])];
  return [...new Set(words)].join(' ');
}

/** The straight shot, where one ball and one pocket are named, and there is one. */
function shotOf({ balls, shape, kit, play: { ball, pocket } }: OptionsRequest): object | null {
  if (ball === null || pocket === null) return null;
  const shot = shotFrom(balls, { kind: 'pot', ball, pocket, via: [] }, shape, kit);
  return shot.ok ? toldShot(shot) : null;
}

function toldPlay(play: Play): object {
  return 'struck' in play ? toldSafety(play) : { ...toldFound(play), ...toldWorth(play.worth) };
}

function toldFound({
  goal,
  headingRad,
  doubleKiss,
  shot,
  fullerSide,
  worth,
  ...ranked
}: WorthyWay): object {
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
