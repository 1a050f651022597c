import { directCut, type Pot, WAY_KINDS, type WayKind } from '../engine/goal/goal';
import type { LegalRule } from '../engine/goal/legal';
import { isWithin } from '../engine/numerics/range';
import type { PocketName } from '../engine/table/pocket-shape';
import type { TableShape } from '../engine/table/table-shape';
import { type DoorRefusal, isRefusal, notTaken } from './door-refusal';
import { type Fields, isFields } from './json-fields';
import { type Listing, parseListing, SAFETY } from './options-order';

/** What of a position may be played. */
export interface GivenPlay extends Listing {
  /** Null: any that may fall. */
  readonly ball: number | null;
  readonly pocket: PocketName | null;
  readonly legal: LegalRule;
  readonly kinds: readonly WayKind[];
  /** The kinds were picked: then no way is dropped for a low chance. */
  readonly isPicked: boolean;
  /** The one direct cut that was asked for before anything else could be; null: more is asked. */
  readonly only: Pot | null;
}

/** Reads what may be played, or tells why it cannot be taken. */
export function parsePlay(fields: Fields, shape: TableShape): GivenPlay | DoorRefusal {
  const chosen = fields.play === undefined ? {} : fields.play;
  if (!isFields(chosen)) return notTaken('play', 'an object with ball and pocket, or one of them');
  const ball = chosen.ball === undefined ? null : parseBall(chosen.ball);
  if (ball !== null && typeof ball === 'object') return ball;
  const pocket = chosen.pocket === undefined ? null : parsePocket(chosen.pocket, shape);
  if (pocket !== null && typeof pocket === 'object') return pocket;
  const legal = fields.legal === undefined ? 'any' : parseLegal(fields.legal);
  if (isRefused(legal)) return legal;
  const kinds = fields.kinds === undefined ? WAY_KINDS : parseKinds(fields.kinds);
  if (isRefused(kinds)) return kinds;
  const listing = parseListing(fields, ball !== null && pocket !== null);
  if (isRefused(listing)) return listing;
  const isPicked = fields.kinds !== undefined;
  return {
    ball,
    pocket,
    legal,
    kinds,
    ...listing,
    isPicked,
    only: onlyOf(fields, ball, pocket, listing),
  };
}

/** Of one ball and one pocket, where nothing more is asked. */
function onlyOf(
  { legal, kinds }: Fields,
  ball: number | null,
  pocket: PocketName | null,
  { hasSafeties }: Listing,
): Pot | null {
  if (ball === null || pocket === null) return null;
  return legal === undefined && kinds === undefined && !hasSafeties
    ? directCut(ball, pocket)
    : null;
}

/** What is to be played from a table by a direct cut, or why it cannot be. */
export function parseGoal(given: unknown, shape: TableShape): Pot | DoorRefusal {
  if (!isFields(given)) return notTaken('play', 'an object with ball and pocket');
  const ball = parseBall(given.ball);
  if (typeof ball === 'object') return ball;
  const pocket = parsePocket(given.pocket, shape);
  return typeof pocket === 'object' ? pocket : directCut(ball, pocket);
}

function isRefused(value: string | object): value is DoorRefusal {
  return typeof value === 'object' && isRefusal(value);
}

function parseBall(given: unknown): number | DoorRefusal {
  return typeof given === 'number'
    ? given
    : notTaken('play.ball', 'the number of a ball on the table');
}

function parsePocket(given: unknown, { pockets }: TableShape): PocketName | DoorRefusal {
  const pocket = pockets.find(({ name }) => name === given)?.name;
  return pocket ?? notTaken('play.pocket', `one of ${pockets.map(({ name }) => name).join(', ')}`);
}

const RULES = ['any', 'lowest', 'low', 'high'] as const;
const NUMBERS = { min: 1, max: 15 };
const LEGAL_WORDS = `one of ${RULES.join(', ')}, or a list of numbers from 1 to ${NUMBERS.max}`;

function parseLegal(given: unknown): LegalRule | DoorRefusal {
  const rule = RULES.find((name) => name === given);
  if (rule !== undefined) return rule;
  const isNumber = (one: unknown): one is number => Number.isInteger(one) && isWithin(NUMBERS, one);
  return Array.isArray(given) &&
    given.length > 0 &&
    given.length <= NUMBERS.max &&
    given.every(isNumber)
    ? [...new Set(given)]
    : notTaken('legal', LEGAL_WORDS);
}

function parseKinds(given: unknown): readonly WayKind[] | DoorRefusal {
  const isKind = (one: unknown) => one === SAFETY || WAY_KINDS.some((kind) => kind === one);
  return Array.isArray(given) && given.length > 0 && given.every(isKind)
    ? WAY_KINDS.filter((kind) => given.includes(kind))
    : notTaken('kinds', `a list of some of ${WAY_KINDS.join(', ')}, ${SAFETY}`);
}
