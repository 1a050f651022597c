import { ballNamed } from '../../src/engine/lie/balls-of';
import { bearing } from '../../src/engine/numerics/angle';
import { DRAWS, type Meant } from '../../src/engine/ways/drawn-chance';
import type { FoundWay } from '../../src/engine/ways/found-way';
import { strokeAt } from '../../src/engine/ways/scan';
import { searchStretch } from '../../src/engine/ways/search-stretch';
import { waysStretches } from '../../src/engine/ways/stretches';
import { askedFor, type WaysQuestion } from '../../src/engine/ways/ways-question';
import { refineSafety, safetiesToRefine } from '../../src/engine/worth/refine-safety';
import { safetyStretches, searchSafety } from '../../src/engine/worth/search-safety';
import { type Worth, worthOf } from '../../src/engine/worth/worth';
import { worthyToRefine } from '../../src/engine/worth/worthy-ways';

/** A stroke that a player may choose. */
export interface Choice extends Meant {
  /** What it is told to be worth; NaN where the player did not ask. */
  readonly worth: number;
}

/** A choice with all that a list tells of it. */
interface ListedChoice extends Choice {
  readonly parts: Worth;
}

export type Chooser = (choices: Choices) => Choice;

/** A quarter of the strokes that the app plays of each. */
const LIST_DRAWS = DRAWS / 4;
const MOST_WAYS = 5;
const MOST_SAFETIES = 2;
/** Of the strokes that safeties are looked for with, every so manieth: the list is to be quick. */
const EVERY_STRETCH = 3;

/** What can be chosen at a position of an endgame, worked out once, when it is asked for. */
export class Choices {
  private readonly question: WaysQuestion;
  private readonly known: {
    found?: readonly FoundWay[];
    pots?: readonly ListedChoice[];
    safeties?: readonly ListedChoice[];
  } = {};

  constructor(question: WaysQuestion) {
    this.question = question;
  }

  /** All pots, as they are found. */
  get found(): readonly FoundWay[] {
    this.known.found ??= waysStretches(this.question).flatMap(
      (part) => searchStretch(this.question, part).ways,
    );
    return this.known.found;
  }

  /** The pots of the list. */
  get pots(): readonly ListedChoice[] {
    this.known.pots ??= this.listPots();
    return this.known.pots;
  }

  /** The safeties of the list: by cushions only where no ball can be hit straight. */
  get safeties(): readonly ListedChoice[] {
    this.known.safeties ??= this.listSafeties();
    return this.known.safeties;
  }

  private listPots(): readonly ListedChoice[] {
    const rule = { most: MOST_WAYS, keepsLow: false };
    return worthyToRefine(this.question, this.found, rule).map((way) => {
      const { headingRad, stroke } = way;
      const parts = worthOf(this.question, way, LIST_DRAWS);
      return { headingRad, stroke, parts, worth: parts.worth };
    });
  }

  private listSafeties(): readonly ListedChoice[] {
    const all = safetyStretches(this.question);
    const straight = all.filter(({ search }) => search === 'safety');
    const some = straight.filter((_, at) => at % EVERY_STRETCH === 0);
    const found = some.flatMap((part) => searchSafety(this.question, part));
    const kicks = all.filter(({ search }) => search === 'safety-kick');
    const safe =
      found.length > 0 ? found : kicks.flatMap((part) => searchSafety(this.question, part));
    return safetiesToRefine(safe, MOST_SAFETIES).map((one) => {
      const { headingRad, stroke, worth: parts } = refineSafety(this.question, one, LIST_DRAWS);
      return { headingRad, stroke, parts, worth: parts.worth };
    });
  }

  /** At the middle of the nearest ball that may be hit first, medium. */
  nearestHit(): Choice {
    const { position } = this.question;
    const asked = askedFor(this.question);
    const cueBall = ballNamed(position, 'cue');
    if (cueBall === null) throw new RangeError('there is no cue ball');
    const [nearest] = asked.first
      .flatMap((name) => ballNamed(position, name) ?? [])
      .map(({ xM, yM }) => ({ x: xM - cueBall.xM, y: yM - cueBall.yM }))
      .sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
    const headingRad = nearest === undefined ? 0 : bearing(nearest.x, nearest.y);
    const stroke = strokeAt(asked, { side: 0, height: 0, speedMps: NEAREST_MPS }, headingRad);
    return { headingRad, stroke: { ...stroke, aimRad: 0 }, worth: Number.NaN };
  }
}

const NEAREST_MPS = 1.5;

/** The one that scores most; of equals the first. */
function best<C>(choices: readonly C[], scoreOf: (choice: C) => number): C | null {
  return choices.reduce<C | null>(
    (one, other) => (one === null || scoreOf(other) > scoreOf(one) ? other : one),
    null,
  );
}

/** A pot that scores more than this is hardly bettered by a safety, so none is looked for. */
interface Enough {
  readonly enough: number;
}

/** A pot or a safety by some score, whichever has more. */
function playBy(scoreOf: (parts: Worth) => number, { enough }: Enough): Chooser {
  const score = ({ parts }: ListedChoice) => scoreOf(parts);
  return (choices) => {
    const pot = best(choices.pots, score);
    if (pot !== null && score(pot) > enough) return pot;
    const safety = best(choices.safeties, score);
    if (pot === null || (safety !== null && score(safety) > score(pot))) {
      return safety ?? choices.nearestHit();
    }
    return pot;
  };
}

/** By what the list says that it is worth; a safety is worth even chances and little more. */
export const byWorth = playBy(({ worth }) => worth, { enough: 0.6 });

/** By a plainer worth: the ease of what comes then, or of what they have then, for the game. */
export const byPlainWorth = playBy(
  (parts) => byThen(parts) + (parts.miss ? parts.miss.share * (1 - parts.miss.theirBest) : 0),
  { enough: 0.85 },
);

/** How often it goes, times the ease of what comes then; the last ball needs nothing after it. */
function byThen({ goes, wins, after }: Worth): number {
  return wins + (after ? (goes - wins) * after.chance : 0);
}

/** A pot by some score, or where there is none the surest legal hit. */
function potBy(scoreOf: (parts: Worth) => number): Chooser {
  return (choices) =>
    best(choices.pots, ({ parts }) => scoreOf(parts)) ??
    best(choices.safeties, ({ parts }) => parts.goes) ??
    choices.nearestHit();
}

/** By how often it goes. */
export const byGoes = potBy(({ goes }) => goes);

/** By how often it goes, times the ease of what comes then. */
export const byGoesThen = potBy(byThen);

/** The easiest direct pot as it is found, whatever it leaves; or the nearest ball hit anyhow. */
export const byEase: Chooser = (choices) => {
  const easiest = best(choices.found, ({ rough }) => rough);
  if (easiest === null) return choices.nearestHit();
  const { headingRad, stroke } = easiest;
  return { headingRad, stroke, worth: Number.NaN };
};
