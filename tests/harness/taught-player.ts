import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { type LoggedShot, learn, type PlayerKnowledge } from '../../src/engine/player/learn';
import { levelTest } from '../../src/engine/player/level-test';
import { shotLine } from '../../src/engine/player/shot-line';
import { mostTelling } from '../../src/engine/player/telling-shot';
import { questionShot } from '../../src/engine/player/the-question';
import { WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import { tableShape } from '../../src/engine/table/table-shape';
import type { LinedShot } from './forecaster';
import { HIDDEN_SPREAD, type HiddenStroke, logged } from './hidden-stroke';
import type { Random } from './seeded-random';

/** What was learnt of a player, and from which shots. */
interface Taught {
  readonly known: PlayerKnowledge;
  readonly shots: readonly LoggedShot[];
}

export const QUESTION = questionLine();

function questionLine() {
  const line = shotLine(questionShot(DEFAULT_KIT, HIDDEN_SPREAD));
  if (line === null) throw new Error('the question has no line');
  return line;
}

const LEVEL_TEST = levelTestToMouths();

/** The reference plays at a mouth, which is as wide to a fast ball as to a slow one. */
function levelTestToMouths() {
  const shape = tableShape(2.54, 1.27, WPA_POCKETS);
  return levelTest({ shape, kit: DEFAULT_KIT, spread: HIDDEN_SPREAD }).flatMap((shot) => {
    if (shot.target.kind !== 'mouth') return [];
    const { distanceM, mouthM } = shot.target;
    const lie = JSON.stringify([shot.position, shot.goal]);
    const plain = { ...shot, target: { kind: 'mouth' as const, distanceM, mouthM } };
    const line = shotLine(plain);
    return line === null ? [] : [{ lie, asked: plain, line }];
  });
}

/** By the level test: so many shots, each the one that tells most just then. */
export function taughtByTest(player: HiddenStroke, count: number): Taught {
  const shots: LoggedShot[] = [];
  let known = learn({ made: null, shots });
  let left = LEVEL_TEST;
  for (let shot = 0; shot < count; shot++) {
    const next = mostTelling(known, left, QUESTION);
    if (next === null) throw new Error('no shot tells anything');
    // No lie comes twice.
    left = left.filter(({ lie }) => lie !== next.lie);
    shots.push(logged(next.line, player.play(next.asked, next.line).told));
    known = learn({ made: null, shots });
  }
  return { known, shots };
}

/** Of so many ordinary shots any, again and again. */
export function taughtByPlay(
  player: HiddenStroke,
  count: number,
  of: readonly LinedShot[],
  random: Random,
): Taught {
  const shots = Array.from({ length: count }, () => {
    const { asked, line } = anyOf(of, random);
    return logged(line, player.play(asked, line).told);
  });
  return { known: learn({ made: null, shots }), shots };
}

export function anyOf(shots: readonly LinedShot[], random: Random): LinedShot {
  const shot = shots[Math.floor(random() * shots.length)];
  if (shot === undefined) throw new Error('there are no shots');
  return shot;
}
