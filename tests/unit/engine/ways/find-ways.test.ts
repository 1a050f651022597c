import { describe, expect, it } from 'vitest';
import type { PlayedKind } from '../../../../src/engine/goal/goal';
import { laidTable, playLaid } from '../../../../src/engine/goal/laid-table';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { NamedBall, Position } from '../../../../src/engine/lie/position';
import { RAD_PER_DEG } from '../../../../src/engine/numerics/angle';
import { waysToRefine } from '../../../../src/engine/ways/pick-ways';
import { raisedStretches } from '../../../../src/engine/ways/raised-stretches';
import { fanOfWay, refineFound } from '../../../../src/engine/ways/refine-found';
import { searchStretch } from '../../../../src/engine/ways/search-stretch';
import { waysStretches } from '../../../../src/engine/ways/stretches';
import type { WaysQuestion } from '../../../../src/engine/ways/ways-question';
import { whyNone } from '../../../../src/engine/ways/why-none';
import { findPlays } from '../../../../src/engine/worth/find-plays';
import { NINE_FOOT } from '../../../harness/invented-positions';
import { waysQuestion } from '../../../harness/ways-positions';

const SEARCH_TIMEOUT_MS = 120_000;

const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });

/** All that is found of a kind, before any of it is worked out. */
function foundOf(position: Position, kind: PlayedKind, changed = {}) {
  const question = waysQuestion(position, { kinds: [kind], ...changed });
  return waysStretches(question).flatMap((part) => searchStretch(question, part).ways);
}

describe('ways that are not direct', { timeout: SEARCH_TIMEOUT_MS }, () => {
  it('bank a ball across the table, about where the mirror image of its pocket says', () => {
    // The mirror image of the middle right pocket in the left rail lies at x = −3 · 0.635: the line to it
    // from the ball meets the rail a third of the way up. A cushion takes some of that angle away.
    const position = [at('cue', 0.15, -0.6), at(1, 0, -0.25)];
    const laid = laidTable(position, NINE_FOOT);
    const ways = foundOf(position, 'bank', { pocket: 'middle-right' });
    const across = ways.filter(({ goal: { via } }) => via.length === 2);
    expect(across.length).toBeGreaterThan(2);
    for (const { goal, headingRad, stroke } of across) {
      expect(goal.via).toEqual([
        { ball: 1, by: 'cue' },
        { cushion: 'left', by: 1 },
      ]);
      const play = playLaid(laid, { ...stroke, aimRad: headingRad }, DEFAULT_KIT);
      const met = play?.events.find(({ kind, ball }) => kind === 'hits-cushion' && ball === 1);
      expect(Math.abs((met?.yM ?? 9) + 0.25 * (2 / 3))).toBeLessThan(0.08);
    }
  });

  it('kick round a ball that lies in the way', () => {
    const wall = [at(2, 0, -0.3), at(3, 0.06, -0.3), at(4, -0.06, -0.3)];
    const position = [at('cue', 0, -0.7), at(1, 0, 1), ...wall];
    const ways = foundOf(position, 'kick', { legal: [1], ball: 1 });
    expect(ways.length).toBeGreaterThan(0);
    for (const { goal } of ways)
      expect(goal.via[0]).toMatchObject({ by: 'cue', cushion: expect.any(String) });
  });

  it('send a ball in by another that all but touches it, in line with the pocket', () => {
    const way = Math.SQRT1_2;
    const in2 = at(2, 0.4, 1.03);
    const position = [at('cue', 0, 0.2), at(1, 0.4 - 0.06 * way, 1.03 - 0.06 * way), in2];
    const ways = foundOf(position, 'combination', { pocket: 'far-right' });
    expect(ways.length).toBeGreaterThan(0);
    for (const { goal } of ways) {
      expect(goal).toMatchObject({
        ball: 2,
        via: [
          { ball: 1, by: 'cue' },
          { ball: 2, by: 1 },
        ],
      });
    }
  });

  it('carom off a ball into one that hangs in the jaws', () => {
    const ways = foundOf([at('cue', -0.2, 0.1), at(1, 0.1, 0.7), at(2, 0.57, 1.2)], 'carom', {
      pocket: 'far-right',
      ball: 2,
    });
    expect(
      ways.some(
        ({ goal }) => JSON.stringify(goal.via) === '[{"ball":1,"by":"cue"},{"ball":2,"by":"cue"}]',
      ),
    ).toBe(true);
  });

  it('kiss twice by a rail where cue ball and ball lie close to it', () => {
    // Struck towards the rail a little behind, it comes back into the cue ball, and off it away from the rail.
    const position = [at('cue', 0.45, -0.05), at(1, 0.55, 0.05)];
    const kissed = foundOf(position, 'bank').filter(({ doubleKiss }) => doubleKiss);
    for (const { goal } of kissed) {
      expect(goal.via).toContainEqual({ cushion: 'right', by: 1 });
      expect(goal.via.filter((step) => 'ball' in step)).toHaveLength(2);
    }
    expect(kissed.length).toBeGreaterThan(0);
  });

  it('never touch a ball first that may not be', () => {
    const position = [at('cue', 0, -0.6), at(1, 0.2, 0.4), at(9, -0.1, 0.3), at(8, 0.3, -0.2)];
    const laid = laidTable(position, NINE_FOOT);
    // Of a group what falls must be of it, too; where balls are picked, any may fall.
    for (const [kind, legal] of [
      ['bank', 'high'],
      ['kick', 'high'],
      ['combination', 'high'],
      ['carom', 'high'],
      ['kick', [9]],
    ] as const) {
      for (const { goal, headingRad, stroke } of foundOf(position, kind, { legal })) {
        const play = playLaid(laid, { ...stroke, aimRad: headingRad }, DEFAULT_KIT);
        const first = play?.events.find(({ kind: what }) => what === 'hits-ball');
        expect(first).toMatchObject({ ball: 0, other: laid.names.indexOf(9) });
        expect(goal.ball).toBe(9);
      }
    }
  });
});

describe('ways with a raised cue', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const partsOf = (question: WaysQuestion) =>
    waysStretches(question).map((part) => searchStretch(question, part));

  it('jump a ball that hides all that may be hit, where no level stroke banks it', () => {
    const position = [at('cue', 0, -0.6), at(2, 0.02, -0.28), at(1, 0.05, 0.25)];
    const question = waysQuestion(position, {
      kinds: ['bank'],
      legal: [1],
      ball: 1,
      pocket: 'near-left',
    });
    const parts = partsOf(question);
    expect(parts.flatMap(({ ways }) => ways)).toEqual([]);
    const ways = raisedStretches(question, parts).flatMap(
      (part) => searchStretch(question, part).ways,
    );
    expect(ways.length).toBeGreaterThan(0);
    const laid = laidTable(position, NINE_FOOT);
    for (const way of ways.slice(0, 2)) {
      const told = refineFound(question, way);
      expect(told.way.isRaised).toBe(true);
      const { aimRad, ...stroke } = told.option.stroke;
      // A jump takes some thirty degrees (common practice, no source).
      expect(stroke.elevationRad).toBeGreaterThan(25 * RAD_PER_DEG);
      const play = playLaid(laid, { ...stroke, aimRad: way.headingRad + aimRad }, DEFAULT_KIT);
      const events = play?.events ?? [];
      const hit = events.find(({ kind }) => kind === 'hits-ball');
      expect(hit).toMatchObject({ ball: 0, other: laid.names.indexOf(1) });
    }
  });

  it('are looked for only for a kind of which no level one goes', () => {
    const open = waysQuestion([at('cue', 0.15, -0.6), at(1, 0, -0.25)], { kinds: ['bank'] });
    expect(raisedStretches(open, partsOf(open))).toEqual([]);
    expect(raisedStretches(open, []).length).toBeGreaterThan(0);
  });
});

describe('a search for all ways', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const question = waysQuestion([at('cue', -0.3, -0.6), at(1, 0.2, 0.5), at(2, -0.3, 0.2)]);
  const rule = { most: 5, keepsLow: false };

  it('tells the first ways before it is done, and the best of each kind at the end', () => {
    const search = findPlays(question, { ...rule, order: 'goes', hasSafeties: false });
    const early: number[] = [];
    let last = search.next();
    while (!last.done) {
      expect(last.value.done).toBeLessThanOrEqual(last.value.of);
      if (last.value.plays.length > 0) early.push(last.value.done / last.value.of);
      last = search.next();
    }
    expect(early[0]).toBeLessThan(0.3);
    const ways = last.value.plays.flatMap((play) => ('struck' in play ? [] : [play]));
    const kinds = ways.map(({ goal }) => goal.kind);
    expect(new Set(kinds).size).toBeGreaterThanOrEqual(4);
    const worth = ways.map(({ chance, clean }) => chance * clean);
    expect([...worth].sort((a, b) => b - a)).toEqual(worth);
  });

  it('comes to the same in whatever order its parts are done', () => {
    const parts = waysStretches(question).filter(
      (part) => part.search !== 'direct' && part.stroke < 3,
    );
    const inOrder = parts.flatMap((part) => searchStretch(question, part).ways);
    const turned = [...parts].reverse().flatMap((part) => searchStretch(question, part).ways);
    expect(inOrder.length).toBeGreaterThan(5);
    expect(waysToRefine(turned, rule)).toEqual(waysToRefine(inOrder, rule));
  });

  it('tells how a way plays out true, at its edges and beyond: there it misses', () => {
    const found = foundOf(question.position, 'bank').sort((a, b) => b.rough - a.rough)[0];
    if (found === undefined) throw new RangeError('there is no bank');
    const told = refineFound(question, found);
    const laid = laidTable(question.position, question.shape);
    const fell = fanOfWay(question, told).map(({ hit, play }) => {
      const outcome = play.balls[laid.names.indexOf(found.goal.ball)]?.outcome;
      return [hit, outcome?.kind === 'pocketed' && outcome.pocket === found.goal.pocket];
    });
    expect(Object.fromEntries(fell)).toMatchObject({
      true: true,
      'missed-thin': false,
      'missed-full': false,
    });
  });
});

describe('a kind of which no way goes', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const whyOf = (position: Position, kinds: readonly ('direct' | PlayedKind)[], changed = {}) => {
    const question = waysQuestion(position, { kinds, ...changed });
    return whyNone(
      question,
      waysStretches(question).map((part) => searchStretch(question, part)),
    );
  };

  it('says so, by what became of what seemed to go', () => {
    const lone = [at('cue', 0, -0.5), at(1, 0.1, 0.3)];
    expect(whyOf(lone, ['combination'])).toEqual([{ kind: 'combination', why: 'no-line' }]);
    expect(whyOf(lone, ['bank'], { legal: 'high' })).toEqual([
      { kind: 'bank', why: 'nothing-legal' },
    ]);
    // Straight behind the cue ball's back: no cut is so thin.
    expect(whyOf(lone, ['direct'], { ball: 1, pocket: 'near-left' })).toEqual([
      { kind: 'direct', why: 'too-thin' },
    ]);
    const closed = [...lone, at(2, 0.355, 0.78)];
    expect(whyOf(closed, ['direct'], { ball: 1, pocket: 'far-right' })[0]?.why).toBe('in-the-way');
  });
});
