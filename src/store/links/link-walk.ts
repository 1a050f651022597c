import type { Step } from '../../engine/goal/goal';
import type { LegalRule } from '../../engine/goal/legal';
import type { BallName, NamedBall } from '../../engine/lie/position';
import { usualNumbers } from '../kit-fields';
import { numberAt, withNumberAt } from '../number-at';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../records';
import { type KeptDrill, NOTHING_CHOSEN, type SavedPosition, type Zone } from '../saved-position';
import type { LinkBytes } from './link-bytes';
import {
  LINK_KINDS,
  LINK_NUMBERS,
  LINK_ORIGINS,
  LINK_POCKETS,
  LINK_RAILS,
  LINK_RULES,
  LIST_OF_BALLS,
} from './link-layout';
import { LINK_ID, type Shared, type SharedKit, type SharedShot } from './shared';

/** What a walk needs beside the bytes. */
export interface Walk extends LinkBytes {
  /** Whether there can be anything more of a list. */
  goesOn(): boolean;
  /** Told of something that only a newer version can mean. */
  meetNewer(): void;
}

/**
 * All that a link holds, one thing after the other, in the order of version 1. What is read is not
 * checked: its types are what they ought to be.
 */
export function walkShared(walk: Walk, { shot, position, kit }: Shared): Shared {
  const drill = position?.drill;
  const given = [shot, position, ...SHELF_NAMES.map((shelf) => kit[shelf]), drill];
  const bits = walk.count(given.reduce((sum, one, place) => sum + (one ? 2 ** place : 0), 0));
  if (bits >= 2 ** given.length) walk.meetNewer();
  const has = (place: number) => (bits >> place) & 1;
  const walked = {
    shot: has(0) ? walkShot(walk, shot ?? ANY_SHOT) : null,
    position: has(1) ? walkPosition(walk, position ?? ANY_POSITION) : null,
    kit: Object.fromEntries(
      SHELF_NAMES.filter((_, place) => has(place + 2)).map((shelf) => [
        shelf,
        walkRecord(walk, shelf, kit[shelf]),
      ]),
    ) as SharedKit,
  };
  // Without its position a way is left unread: then the link is damaged.
  return walked.position && has(given.length - 1)
    ? { ...walked, position: { ...walked.position, drill: walkWay(walk, drill ?? ANY_WAY) } }
    : walked;
}

/* What stands for a thing that is yet to be read has nothing that the walk itself fills in. */
const ANY_SHOT = { shot: { headingRad: null }, pocket: {} } as SharedShot;
const CUE_BALL = { name: 'cue' } as NamedBall;
const NAMED = { name: '', origin: 'by-hand' } as const;
const ANY_POSITION = {
  ...NAMED,
  balls: [] as readonly NamedBall[],
  goal: NOTHING_CHOSEN,
  zone: null,
  changedAtMs: 0,
} as SavedPosition;
const ANY_WAY = { kind: 'direct', via: [] as readonly Step[], stroke: {} } as KeptDrill;
const ANY_STEP: Step = { cushion: 'near', by: 'cue' };

function walkNumbers<H extends object>(walk: LinkBytes, holder: H, paths: readonly string[]): H {
  return paths.reduce<H>(
    (made, path) => withNumberAt(made, path, walk.number(numberAt(holder, path) ?? 0)),
    holder,
  );
}

function walkWord<W>(walk: Walk, words: readonly W[], word: W): W {
  const place = walk.count(words.indexOf(word));
  if (place >= words.length) walk.meetNewer();
  return words[place] as W;
}

function walkList<T>(walk: Walk, list: readonly T[], any: T, take: (one: T) => T): T[] {
  const count = walk.count(list.length);
  const made: T[] = [];
  while (made.length < count && walk.goesOn()) made.push(take(list[made.length] ?? any));
  return made;
}

function walkNamed<N extends { readonly name: string; readonly origin: 'invented' | 'by-hand' }>(
  walk: Walk,
  named: N,
): N {
  const name = walk.text(named.name);
  return { ...named, id: LINK_ID, name, origin: walkWord(walk, LINK_ORIGINS, named.origin) };
}

function walkShot(walk: Walk, given: SharedShot): SharedShot {
  const { shot, pocket } = walkNumbers(walk, given, LINK_NUMBERS.shot);
  const { objectDistanceM: reach, headingRad: heading, ...rest } = shot;
  const headingRad = walkMaybe(walk, heading);
  const objectDistanceM = walkMaybe(walk, reach ?? null);
  const more = objectDistanceM === null ? {} : { objectDistanceM };
  return { shot: { ...rest, headingRad, ...more }, pocket };
}

function walkMaybe(walk: Walk, value: number | null): number | null {
  return walk.count(value === null ? 0 : 1) ? walk.number(value ?? 0) : null;
}

function walkPosition(walk: Walk, given: SavedPosition): SavedPosition {
  const {
    legal: _none,
    drill: _later,
    ...position
  } = walkNumbers(walk, walkNamed(walk, given), LINK_NUMBERS.table);
  const balls = walkList(walk, given.balls, CUE_BALL, (ball) => ({
    ...walkNumbers(walk, ball, LINK_NUMBERS.place),
    name: walkBall(walk, ball.name),
  }));
  const ball = walk.count(given.goal.ball ?? 0) || null;
  const pocket = walkWord(walk, LINK_POCKETS, given.goal.pocket);
  const legal = walkRule(walk, given.legal);
  const zone = walk.count(given.zone ? 1 : 0)
    ? walkNumbers(walk, given.zone ?? ({} as Zone), LINK_NUMBERS.zone)
    : null;
  const goal = { ...given.goal, ball, pocket };
  return { ...position, balls, goal, ...(legal && { legal }), zone };
}

function walkBall(walk: Walk, name: BallName): BallName {
  return walk.count(Number(name) || 0) || CUE_BALL.name;
}

/** How it is played; what became of it at home stays there. */
function walkWay(walk: Walk, given: KeptDrill): KeptDrill {
  return {
    kind: walkWord(walk, LINK_KINDS, given.kind),
    via: walkList(walk, given.via, ANY_STEP, (step) => walkStep(walk, step)),
    stroke: walkNumbers(walk, given.stroke, LINK_NUMBERS.stroke),
    tries: [],
  };
}

function walkStep(walk: Walk, step: Step): Step {
  const by = walkBall(walk, step.by);
  const rails = LINK_RAILS.length;
  const met = walk.count('ball' in step ? rails + step.ball : LINK_RAILS.indexOf(step.cushion));
  const cushion = LINK_RAILS[met];
  return cushion ? { cushion, by } : { ball: met - rails, by };
}

function walkRule(walk: Walk, legal: LegalRule | undefined): LegalRule | undefined {
  const picked = typeof legal === 'object' ? legal : [];
  const word = walkWord(walk, LINK_RULES, typeof legal === 'object' ? LIST_OF_BALLS : legal);
  return word === LIST_OF_BALLS ? walkList(walk, picked, 0, walk.count) : word;
}

/** What a link does not have yet is as usual. */
function walkRecord<S extends ShelfName>(
  walk: Walk,
  shelf: S,
  given: Shelves[S] | undefined,
): Shelves[S] {
  const usual = { ...usualNumbers(shelf), ...NAMED, changes: [], like: null } as object;
  const named = walkNamed(walk, given ?? (usual as Shelves[S]));
  const paths = LINK_NUMBERS[shelf];
  const count = walk.count(paths.length);
  if (count > paths.length) walk.meetNewer();
  return walkNumbers(walk, named, paths.slice(0, count));
}
