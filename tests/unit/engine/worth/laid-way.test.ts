import { describe, expect, it } from 'vitest';
import { overTable } from '../../../../src/engine/ways/drawn-chance';
import type { FoundWay } from '../../../../src/engine/ways/found-way';
import { fanOfWay } from '../../../../src/engine/ways/refine-found';
import { searchStretch } from '../../../../src/engine/ways/search-stretch';
import { waysStretches } from '../../../../src/engine/ways/stretches';
import { type LaidWay, tellLaid } from '../../../../src/engine/worth/laid-way';
import { tellWorthy } from '../../../../src/engine/worth/worthy-ways';
import { readLink, writeLink } from '../../../../src/store/links/link-text';
import { SAID_IN_VERSION_1 } from '../../../fixtures/link-of-version-1';
import { between, seededRandom } from '../../../harness/seeded-random';
import { waysQuestion } from '../../../harness/ways-positions';

const QUESTION = waysQuestion([
  { name: 'cue', xM: -0.2, yM: -0.6 },
  { name: 3, xM: 0.25, yM: 0.6 },
  { name: 8, xM: -0.4, yM: 0.9 },
]);

/** One way of every kind that a search finds there. */
function found(): readonly FoundWay[] {
  const kinds = new Map<string, FoundWay>();
  for (const stretch of waysStretches(QUESTION)) {
    for (const way of searchStretch(QUESTION, stretch).ways) {
      if (!kinds.has(way.goal.kind)) kinds.set(way.goal.kind, way);
    }
  }
  return [...kinds.values()];
}
const FOUND = found();

const laidAs = (way: FoundWay): LaidWay => ({ goal: way.goal, stroke: overTable(way) });

/** What comes out of a link into which a way was put. */
function throughLink({ goal, stroke }: LaidWay): LaidWay {
  const { kind, ball, pocket, via } = goal;
  const base = SAID_IN_VERSION_1.position;
  if (!base) throw new Error('a position');
  const link = writeLink({
    position: {
      ...base,
      balls: QUESTION.position,
      goal: { kind: 'pot', ball, pocket, via: [] },
      drill: { kind, via, stroke, tries: [] },
    },
  });
  const read = readLink(link);
  const drill = read.ok ? read.shared.position?.drill : null;
  if (!drill) throw new Error(link);
  return { goal: { ...goal, via: drill.via } as LaidWay['goal'], stroke: drill.stroke };
}

describe('a way that somebody laid', () => {
  it('was found of several kinds', () => {
    expect(FOUND.map(({ goal }) => goal.kind)).toEqual(
      expect.arrayContaining(['direct', 'bank', 'kick']),
    );
  });

  it.each(FOUND.map((way) => [way.goal.kind, way] as const))(
    'does by a link what it did where it was found, and is told the same: a %s',
    (_, way) => {
      const there = tellWorthy(QUESTION, way);
      const here = tellLaid(QUESTION, throughLink(laidAs(way)));
      expect(here?.does).toBe(true);
      expect(here?.told.goal).toEqual(way.goal);
      expect(here?.told.way).toEqual(there.way);
      // Eight digits may turn a draw that went by a hair.
      expect(Math.abs((here?.told.chance ?? 0) - there.chance)).toBeLessThanOrEqual(2 / 512);
      expect(Math.abs((here?.told.worth.worth ?? 0) - there.worth.worth)).toBeLessThan(0.01);
      expect(here && fanOfWay(QUESTION, here.told).map(({ hit }) => hit)).toEqual(
        fanOfWay(QUESTION, there).map(({ hit }) => hit),
      );
    },
  );

  it('is told, in numbers, when it does something else', () => {
    const random = seededRandom(1905);
    const bank = FOUND.find(({ goal }) => goal.kind === 'bank');
    if (!bank) throw new Error('a bank');
    const other = () => ({
      aimRad: between(random, -6, 6),
      side: between(random, -0.6, 0.6),
      height: between(random, -0.6, 0.6),
      elevationRad: between(random, 0, 1.2),
      speedMps: between(random, 0.02, 13),
    });
    let told = 0;
    for (let left = 12; left > 0; left--) {
      const here = tellLaid(QUESTION, { goal: bank.goal, stroke: other() });
      if (here === null) continue;
      told++;
      expect(here.does).toBe(false);
      JSON.stringify(here, (name, value) => {
        if (typeof value === 'number') expect(Number.isFinite(value), name).toBe(true);
        return value;
      });
      expect(here.told.chance).toBeGreaterThanOrEqual(0);
      expect(here.told.worth.worth).toBeGreaterThanOrEqual(0);
      expect(fanOfWay(QUESTION, here.told).length).toBeGreaterThan(0);
    }
    expect(told).toBeGreaterThan(6);
  });

  it('cannot be where what it needs is not there, or its steps are of another kind', () => {
    const bank = FOUND.find(({ goal }) => goal.kind === 'bank');
    if (!bank) throw new Error('a bank');
    const laid = laidAs(bank);
    const without = (name: unknown) => ({
      ...QUESTION,
      position: QUESTION.position.filter((ball) => ball.name !== name),
    });
    expect(tellLaid(without('cue'), laid)).toBeNull();
    expect(tellLaid(without(bank.goal.ball), laid)).toBeNull();
    const kick = { ...laid.goal, kind: 'kick' } as LaidWay['goal'];
    expect(tellLaid(QUESTION, { ...laid, goal: kick })).toBeNull();
    const past = { ...laid.stroke, side: 0.9, height: 0.9 };
    expect(tellLaid(QUESTION, { ...laid, stroke: past })).toBeNull();
  });
});
