import { laidTable, playLaid } from '../../src/engine/goal/laid-table';
import { legalPlace } from '../../src/engine/lie/legal-place';
import type { Position } from '../../src/engine/lie/position';
import { overTable } from '../../src/engine/ways/drawn-chance';
import { askedFor, type WaysQuestion } from '../../src/engine/ways/ways-question';
import { Ease } from '../../src/engine/worth/ease';
import { bestInHand } from '../../src/engine/worth/in-hand';
import { type Turn, turnAfter } from '../../src/engine/worth/turn';
import { type Choice, Choices, type Chooser } from './choosers';
import { drawnByChance } from './drawn-by-chance';
import { type Random, seededRandom } from './seeded-random';
import { waysQuestion } from './ways-positions';

/** How an endgame came out. */
export interface Endgame {
  /** Which of the two won; null: neither, within so many strokes. */
  readonly winner: 0 | 1 | null;
  readonly choices: readonly Chosen[];
}

/** What was chosen, by whom, with so many balls on the table; worth as it was told, or NaN. */
export interface Chosen {
  readonly by: 0 | 1;
  readonly worth: number;
  readonly balls: number;
}

/** After so many strokes nobody has won. */
const MOST_STROKES = 60;
/** Between one game's errors and the next's. */
const GAME_SEEDS = 7919;

/** What is asked at a position of an endgame: the lowest ball first, direct cuts and safeties. */
function endgameQuestion(position: Position): WaysQuestion {
  return waysQuestion(position, { legal: 'lowest', kinds: ['direct'] });
}

/** What can be chosen at positions: games from one rack share it as long as they go alike. */
export class ChoicesKept {
  private readonly all = new Map<string, Choices>();

  at(question: WaysQuestion): Choices {
    const key = JSON.stringify(question.position);
    const kept = this.all.get(key) ?? new Choices(question);
    this.all.set(key, kept);
    return kept;
  }
}

/**
 * An endgame, lowest ball first, of two club players alike but for how they choose. The first of them begins.
 * How a stroke strays hangs on the seed and its number alone, so it is the same in both games of a pair.
 */
export function playEndgame(
  rack: Position,
  choosers: readonly [Chooser, Chooser],
  seed: number,
  kept = new ChoicesKept(),
): Endgame {
  const choices: Chosen[] = [];
  let position = rack;
  let by: 0 | 1 = 0;
  for (let stroke = 0; stroke < MOST_STROKES; stroke++) {
    const question = endgameQuestion(position);
    const choice = choosers[by](kept.at(question));
    choices.push({ by, worth: choice.worth, balls: position.length - 1 });
    const turn = strokeOut(question, choice, seededRandom(seed * GAME_SEEDS + stroke));
    const other: 0 | 1 = by === 0 ? 1 : 0;
    if (turn.kind === 'won') return { winner: by, choices };
    if (turn.kind === 'lost') return { winner: other, choices };
    if (turn.kind === 'goes-on') {
      position = turn.position;
      continue;
    }
    by = other;
    position = turn.isFoul ? withCueBall(turn.position) : turn.position;
  }
  return { winner: null, choices };
}

function strokeOut(question: WaysQuestion, choice: Choice, random: Random): Turn {
  const { position, shape, profile, spread, legal } = question;
  const laid = laidTable(position, shape);
  const drawn = drawnByChance(overTable(choice), question.kit, profile, spread, random);
  const play = playLaid(laid, drawn.stroke, drawn.kit, { endsOnly: true });
  return turnAfter(legal, position, laid, play);
}

/** The cue ball in hand put down where it is best, or anywhere. */
function withCueBall(position: Position): Position {
  const question = endgameQuestion(position);
  const best = bestInHand(new Ease(question), position, askedFor(question).first);
  if (best !== null) return [best.cueBall, ...position];
  const { shape, kit } = question;
  const place = legalPlace(position, 'cue', { xM: 0, yM: -shape.lengthM / 4 }, shape, kit);
  return [{ name: 'cue', xM: place?.xM ?? 0, yM: place?.yM ?? 0 }, ...position];
}
