import { beforeAll, describe, expect, it } from 'vitest';
import { WAY_KINDS } from '../../src/engine/goal/goal';
import { laidTable } from '../../src/engine/goal/laid-table';
import { waysToRefine } from '../../src/engine/ways/pick-ways';
import { searchStretch } from '../../src/engine/ways/search-stretch';
import { waysStretches } from '../../src/engine/ways/stretches';
import { CAMPAIGN_TIMEOUT_MS, campaignSize, tell } from '../harness/campaign-size';
import { seededRandom } from '../harness/seeded-random';
import { randomPosition, waysQuestion } from '../harness/ways-positions';
import { compareTables } from '../truth/report/compare-tables';

const WAYS = campaignSize(5, 200);
const OF_A_POSITION = 5;
/** A touch each of some balls and cushions, until the first of them falls. */
const MOST_TOUCHES = 14;
/** Where a ball falls in the same pocket by both: they are a foot apart at least, m. */
const SAME_POCKET_MM = 100;

interface Compared {
  readonly kind: string;
  readonly isSame: boolean;
}

/** Engine and reference play a way up to the first fall, or to a pocket's point, where errors leap. */
function compareAll(): readonly Compared[] {
  const random = seededRandom(1703);
  const all: Compared[] = [];
  while (all.length < WAYS) {
    const question = waysQuestion(randomPosition(random, 3));
    const { shape, kit } = question;
    const { balls } = laidTable(question.position, shape);
    const found = waysStretches(question).flatMap((part) => searchStretch(question, part).ways);
    const rule = { most: OF_A_POSITION, keepsLow: false };
    for (const { goal, headingRad, stroke } of waysToRefine(found, rule).slice(
      0,
      WAYS - all.length,
    )) {
      const played = { ...stroke, aimRad: headingRad + stroke.aimRad };
      const compared = compareTables({ balls, stroke: played, kit, shape }, MOST_TOUCHES);
      const { engine, reference, touchesMm } = compared;
      const isSame = engine === reference && (touchesMm.at(-1) ?? 0) < SAME_POCKET_MM;
      all.push({ kind: goal.kind, isSame });
      if (!isSame) tell(`${goal.kind}: engine ${engine}; reference ${reference}`);
    }
  }
  return all;
}

describe(`${WAYS} ways, played by the engine and by its reference`, () => {
  let all: readonly Compared[] = [];
  beforeAll(() => {
    all = compareAll();
  }, CAMPAIGN_TIMEOUT_MS);

  it('send the same balls into the same pockets in 99 of 100', () => {
    const same = all.filter(({ isSame }) => isSame).length;
    tell(`beside the reference: ${same} of ${all.length} ways the same`);
    expect(same).toBeGreaterThanOrEqual(0.99 * all.length - (all.length < 100 ? 0 : 0.5));
  });

  it('are of several kinds', () => {
    expect(new Set(all.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(WAY_KINDS.length - 2);
  });
});
