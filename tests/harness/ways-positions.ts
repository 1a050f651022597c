import { WAY_KINDS } from '../../src/engine/goal/goal';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { UNMEASURED } from '../../src/engine/kit/kit-spread';
import { isLegal } from '../../src/engine/lie/legal-place';
import type { NamedBall, Position } from '../../src/engine/lie/position';
import { INVENTED_PROFILES } from '../../src/engine/room/stroke-profile';
import type { WaysQuestion } from '../../src/engine/ways/ways-question';
import { NINE_FOOT } from './invented-positions';
import { between, type Random } from './seeded-random';

/** A cue ball and so many others anywhere on the bed. */
export function randomPosition(random: Random, count: number): Position {
  const balls: NamedBall[] = [];
  while (balls.length <= count) {
    const at = { xM: between(random, -0.6, 0.6), yM: between(random, -1.23, 1.23) };
    if (!isLegal(at, balls, NINE_FOOT, DEFAULT_KIT)) continue;
    balls.push({ name: balls.length === 0 ? 'cue' : balls.length, ...at });
  }
  return balls;
}

/** All ways to play a position, by an invented club player with an ordinary kit on a level bed. */
export function waysQuestion(
  position: Position,
  changed: Partial<WaysQuestion> = {},
): WaysQuestion {
  return {
    position,
    shape: NINE_FOOT,
    kit: DEFAULT_KIT,
    // Tilted beds are slow to play.
    spread: { ...UNMEASURED, bedSlopeAlong: 0, bedSlopeRight: 0 },
    profile: INVENTED_PROFILES.club,
    legal: 'any',
    kinds: WAY_KINDS,
    ball: null,
    pocket: null,
    zone: null,
    ...changed,
  };
}
