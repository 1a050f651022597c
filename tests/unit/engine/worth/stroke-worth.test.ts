import { describe, expect, it } from 'vitest';
import { laidTable, playLaid } from '../../../../src/engine/goal/laid-table';
import type { LegalRule } from '../../../../src/engine/goal/legal';
import type { NamedBall, Position } from '../../../../src/engine/lie/position';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import { directWays } from '../../../../src/engine/ways/direct-ways';
import { overTable } from '../../../../src/engine/ways/drawn-chance';
import { Ease } from '../../../../src/engine/worth/ease';
import { StrokeJudge } from '../../../../src/engine/worth/stroke-worth';
import { usualEase } from '../../../../src/engine/worth/usual-ease';
import { NINE_FOOT } from '../../../harness/invented-positions';
import { seededRandom } from '../../../harness/seeded-random';
import { randomPosition, waysQuestion } from '../../../harness/ways-positions';

const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });

/** What a play of the balls comes to: of a stroke up the table at so many m/s, or of a slip of the tip. */
function judged(position: Position, speedMps: number | null, legal: LegalRule = 'lowest') {
  const question = waysQuestion(position, { legal });
  const { kit } = question;
  const laid = laidTable(position, NINE_FOOT);
  const up = { aimRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: speedMps ?? 0 };
  const play = speedMps === null ? null : playLaid(laid, up, kit);
  return new StrokeJudge(question).judge(play);
}

/** What the 1 potted into the far right pocket comes to. */
function judgedPot(position: Position) {
  const question = waysQuestion(position, { legal: 'lowest', kinds: ['direct'] });
  const [way] = directWays(question, 1, 'far-right').ways;
  if (way === undefined) throw new RangeError('the ball does not go');
  const play = playLaid(laidTable(position, NINE_FOOT), overTable(way), question.kit);
  return new StrokeJudge(question).judge(play);
}

/** By hand, of one ball to go and of two: see the recursion of a standing. */
function standsAt(ease: number, usual: number, balls: 1 | 2): number {
  const one = 1 / (2 - usual);
  const two = (usual * one + 1 - usual) / (2 - usual);
  return Math.max(
    1 / 2,
    balls === 1 ? ease + (1 - ease) * (1 - one) : ease * one + (1 - ease) * (1 - two),
  );
}

const LAST = [at('cue', 0, -0.4), at(1, 0, 0.2)];
const EASY = [at('cue', 0.35, 0.5), at(1, 0.45, 1)];
const usual = usualEase(new Ease(waysQuestion([])));

describe('what one stroke is worth', () => {
  it('is all where the last ball falls, and else how the game stands by the next, as with one to go', () => {
    expect(judgedPot(EASY)).toEqual({ value: 1, next: null, theirs: null, hasWon: true });
    for (const others of [[at(2, 0.3, -0.2)], [at(2, -0.4, -0.3), at(3, 0.1, -0.9)]]) {
      const { value, next, theirs, hasWon } = judgedPot([...EASY, ...others]);
      expect([theirs, hasWon]).toEqual([null, false]);
      expect(next?.ball).toBe(2);
      expect(value).toBeCloseTo(standsAt(next?.chance ?? 0, usual, 1), 12);
    }
  });

  it('counts one less how the other player stands where the turn passes', () => {
    for (const [balls, position] of [
      [1, LAST],
      [2, [...LAST, at(2, 0.45, 0.9)]],
      [2, [...LAST, at(2, 0.45, 0.9), at(3, -0.4, -0.9), at(4, -0.5, 0.6)]],
    ] as const) {
      const { value, theirs, next, hasWon } = judged(position, 1.5);
      expect(theirs).not.toBeNull();
      expect([next, hasWon]).toEqual([null, false]);
      expect(value).toBeCloseTo(1 - standsAt(theirs?.best ?? 0, usual, balls), 12);
    }
  });

  it('counts as well of a foul, with the ball in hand', () => {
    const { value, theirs } = judged(LAST, null);
    expect(theirs?.isFoul).toBe(true);
    expect(theirs?.best).toBeGreaterThan(0.7);
    expect(value).toBeCloseTo(1 - standsAt(theirs?.best ?? 0, usual, 1), 12);
  });

  it('takes the other group for theirs, and the eight for a ball more', () => {
    const groups = [at('cue', 0, -0.4), at(3, 0, 0.2), at(8, -0.3, 0.8), at(11, 0.3, -0.9)];
    const { value, theirs } = judged(groups, 1.5, 'low');
    expect(theirs?.isFoul).toBe(false);
    expect(value).toBeCloseTo(1 - standsAt(theirs?.best ?? 0, usual, 2), 12);
    const eightLeft = groups.filter(({ name }) => name !== 11);
    const onEight = judged(eightLeft, 1.5, 'low');
    expect(onEight.value).toBeCloseTo(1 - standsAt(onEight.theirs?.best ?? 0, usual, 1), 12);
  });
});

describe('a usual shot', () => {
  it('is near the mean of one ball alone on layouts drawn at random, for any player', () => {
    const random = seededRandom(2204);
    const layouts = Array.from({ length: 1000 }, () => randomPosition(random, 1));
    for (const profile of Object.values(INVENTED_PROFILES)) {
      const ease = new Ease(waysQuestion([], { profile }));
      const sum = layouts.reduce((all, one) => all + (ease.easiest(one, [1])?.chance ?? 0), 0);
      expect(Math.abs(usualEase(ease) - sum / layouts.length)).toBeLessThan(0.04);
    }
  });
});
