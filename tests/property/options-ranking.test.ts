import { beforeAll, describe, expect, it } from 'vitest';
import { openingAt } from '../../src/engine/goal/opening';
import { didGo, playOn, type Scene } from '../../src/engine/goal/scene';
import { lineCrossing } from '../../src/engine/motion/line-crossing';
import { runOf } from '../../src/engine/motion/run';
import { pathCheck } from '../../src/engine/plan/path-in-the-way';
import { orderWays, waysToRefine } from '../../src/engine/plan/rank-ways';
import type { RankedWay } from '../../src/engine/plan/ranked-way';
import { refineWay } from '../../src/engine/plan/refine-way';
import type { OptionQuestion } from '../../src/engine/plan/solve-option';
import type { TablePlay } from '../../src/engine/table/table-play';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { drawnByChance } from '../harness/drawn-by-chance';
import { type AskedPosition, inventedPositions, someOptions } from '../harness/invented-positions';
import { type Random, seededRandom } from '../harness/seeded-random';

/** Ten positions, all invented, with long thin cuts and position to play among them. */
const POSITIONS = inventedPositions();
const WAYS = campaignSize(3, 6);
const PLAYS = campaignSize(400, 20_000);

/** A stroke as it came out, played. */
function drawnPlay({ question, scene }: AskedPosition['asked'], way: RankedWay, random: Random) {
  const { profile, spread } = question;
  const { stroke, kit } = drawnByChance(way.option.stroke, scene.kit, profile, spread, random);
  const table = playOn({ ...scene, kit }, stroke);
  return table && { table, kit };
}

/** Whether the object ball would cross within its mouth, were there no cushions about it. */
function crosses({ balls }: TablePlay, question: OptionQuestion, scene: Scene): boolean {
  const run = balls[1];
  const start = run?.phases[0]?.start;
  const { target, cutRad } = question;
  if (run === undefined || start === undefined || target.kind !== 'mouth') return false;
  const crossing = lineCrossing(runOf(start, 0, scene.kit), {
    fromXM: run.from.xM,
    fromYM: run.from.yM,
    alongRad: scene.headingRad + cutRad,
    distanceM: target.distanceM,
  });
  if (crossing === null || target.openings === undefined) return false;
  const { midM, halfM } = openingAt(target.openings, crossing.speedMps);
  return Math.abs(crossing.rightM - midM) <= halfM;
}

interface Counted {
  readonly way: RankedWay;
  /** Shares of the strokes: by the mouth, and by what really fell. */
  readonly crossed: number;
  readonly fell: number;
}

function count({ asked }: AskedPosition, way: RankedWay, random: Random): Counted {
  let [crossed, fell] = [0, 0];
  for (let stroke = 0; stroke < PLAYS; stroke++) {
    const play = drawnPlay(asked, way, random);
    if (play === null) continue;
    if (crosses(play.table, asked.question, { ...asked.scene, kit: play.kit })) crossed++;
    if (didGo(play.table, asked.scene)) fell++;
  }
  return { way, crossed: crossed / PLAYS, fell: fell / PLAYS };
}

function countAll(): readonly (readonly Counted[])[] {
  const random = seededRandom(90);
  return POSITIONS.map((position) => {
    const options = someOptions(position, campaignSize(4, 2)).filter(pathCheck(position.asked));
    const refined = waysToRefine(position.asked, options)
      .slice(0, 2 * WAYS)
      .map((named) => refineWay(position.asked, named));
    return orderWays(refined)
      .slice(0, WAYS)
      .map((way) => count(position, way, random));
  });
}

const sampling = (share: number) => Math.sqrt((share * (1 - share)) / PLAYS);
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

const rms = (list: readonly number[]) => Math.sqrt(mean(list.map((one) => one ** 2)));

describe(`ways from ten invented positions, each played ${PLAYS} times on the whole table`, () => {
  let counted: readonly (readonly Counted[])[] = [];
  let all: readonly Counted[] = [];
  beforeAll(() => {
    counted = countAll();
    all = counted.flat();
  }, CAMPAIGN_TIMEOUT_MS);

  it('go as often as their chance says, by the mouth, within the errors', () => {
    const excesses = all.map(
      ({ way, crossed }) => (way.chance - crossed) / Math.hypot(way.chanceError, sampling(crossed)),
    );
    expect(counted).toHaveLength(10);
    expect(excesses.length).toBeGreaterThanOrEqual(25);
    expect(Math.max(...excesses.map(Math.abs))).toBeLessThan(4);
    expect(rms(excesses)).toBeLessThan(1.4);
  });

  it('come in the order in which they go, where more than two points lie between them', () => {
    let pairs = 0;
    for (const one of all) {
      for (const other of all) {
        const error = Math.hypot(one.way.chanceError, other.way.chanceError, 2 * sampling(0.3));
        if (one.way.chance - other.way.chance < Math.max(0.02, 3 * error)) continue;
        pairs++;
        expect(one.crossed).toBeGreaterThan(other.crossed);
      }
    }
    expect(pairs).toBeGreaterThan(100);
  });

  it('go nearly as often by straight lines, by which they were chosen', () => {
    const apart = all.map(({ way }) => way.option.chance.share - way.chance);
    expect(Math.abs(mean(apart))).toBeLessThan(0.02);
    expect(rms(apart)).toBeLessThan(0.03);
  });

  it('really fall about as often as their chance says, jaws and all', () => {
    const apart = all.map(({ way, fell }) => fell - way.chance);
    const largest = Math.max(...apart.map(Math.abs));
    tell(`fell less chance: mean ${mean(apart).toFixed(4)}, at most ${largest.toFixed(4)}`);
    expect(Math.abs(mean(apart))).toBeLessThan(0.01);
    expect(rms(apart)).toBeLessThan(0.03);
    expect(largest).toBeLessThan(0.08);
  });
});
