import type { KitKnowledge } from '../../../engine/fit/kit-knowledge';
import { WAY_KINDS } from '../../../engine/goal/goal';
import { ballNamed } from '../../../engine/lie/balls-of';
import { findMisplaced } from '../../../engine/lie/misplaced';
import type { KnownPlayer } from '../../../engine/player/player-report';
import type { StrokeProfile } from '../../../engine/room/stroke-profile';
import type { TableShape } from '../../../engine/table/table-shape';
import type { WaysQuestion } from '../../../engine/ways/ways-question';
import type { SavedPosition } from '../../../store/saved-position';
import { CHOOSE_PROBLEMS } from '../../../words/choose-problems';
import { noShotWords } from '../../../words/no-shot-words';
import { chanceSpread } from '../../player/learn-player';
import type { PlayerModel } from '../../player/player-model';

/** What a search for all ways hangs on. */
export interface WaysFrom {
  /** As it lies on the table. */
  readonly position: SavedPosition;
  readonly shape: TableShape;
  /** The bed as seen from the break end. */
  readonly knowledge: KitKnowledge;
  readonly profile: StrokeProfile;
  /** What is learnt of who plays; null where nothing is. */
  readonly player: KnownPlayer | null;
}

/** What the engine is asked of a position; in one line why it cannot be. */
function waysAsked(from: WaysFrom): WaysQuestion | string {
  const { position, shape, knowledge, profile, player } = from;
  const { balls, goal, legal = 'any', zone } = position;
  const { kit, spread, correlation } = knowledge;
  const { ball, pocket } = goal;
  if (ballNamed(balls, 'cue') === null) {
    return noShotWords({ ok: false, reason: 'no-cue-ball' }).message;
  }
  if (balls.length < 2) return CHOOSE_PROBLEMS.noOtherBall;
  const misplaced = findMisplaced(balls, shape, kit);
  if (misplaced !== null) return noShotWords({ ok: false, ...misplaced }).message;
  return {
    position: balls,
    shape,
    kit,
    spread: chanceSpread(player, spread),
    correlation,
    profile,
    legal,
    kinds: WAY_KINDS,
    ball,
    pocket,
    zone,
  };
}

/** What is asked, and for whom. */
export type AskedFor = WaysQuestion & { readonly whom: unknown };

/** The same, and for whom: with the first that is known of them chances are theirs, and no longer anybody's. */
export function waysFor(
  from: WaysFrom,
  { inPlay, isKnown }: Pick<PlayerModel, 'inPlay' | 'isKnown'>,
): AskedFor | string {
  const question = waysAsked(from);
  const { id, madeOf10 } = inPlay.value;
  const whom = { id, madeOf10, isKnown: isKnown.value };
  return typeof question === 'string' ? question : { ...question, whom };
}
