import { describe, expect, it } from 'vitest';
import type { LegalRule } from '../../../../src/engine/goal/legal';
import type { BallName, NamedBall, Position } from '../../../../src/engine/lie/position';
import type { Outcome, TableEvent, TablePlay } from '../../../../src/engine/table/table-play';
import { ballsToGo, othersRule, turnAfter } from '../../../../src/engine/worth/turn';

const at = (name: BallName, xM: number, yM: number): NamedBall => ({ name, xM, yM });
const rests = (xM: number, yM: number): Outcome => ({ kind: 'rests', xM, yM });
const FALLS: Outcome = { kind: 'pocketed', pocket: 'far-left', timeS: 2 };
const LOST: Outcome = { kind: 'off-table', xM: 1, yM: 0, timeS: 1 };

const hits = (other: number): TableEvent => ({
  kind: 'hits-ball',
  timeS: 1,
  ball: 0,
  other,
  xM: 0,
  yM: 0,
});
const RAIL: TableEvent = {
  kind: 'hits-cushion',
  timeS: 1.5,
  ball: 1,
  cushion: 'far',
  part: 'nose',
  xM: 0,
  yM: 1,
};

/** What becomes of the turn when a play so ends. */
function turnOf(
  rule: LegalRule,
  names: readonly BallName[],
  outcomes: readonly Outcome[],
  events: readonly TableEvent[] = [hits(1), RAIL],
) {
  const position: Position = names.map((name, place) => at(name, 0.1 * place, 0));
  const balls = outcomes.map((outcome) => ({ from: { xM: 0, yM: 0 }, phases: [], outcome }));
  const play: TablePlay = { ok: true, balls, events, endS: 5, complete: true };
  return turnAfter(rule, position, { names }, play);
}

// The rules of a turn: common practice, no source.
describe('the turn after a stroke', () => {
  const REST = rests(0, 0.5);

  it('goes on where a ball falls that may, and passes where none does', () => {
    expect(turnOf('lowest', ['cue', 1, 2], [REST, FALLS, rests(0.3, 0)])).toEqual({
      kind: 'goes-on',
      position: [at('cue', 0, 0.5), at(2, 0.3, 0)],
    });
    expect(turnOf('lowest', ['cue', 1, 2], [REST, rests(0.2, 0), rests(0.3, 0)])).toMatchObject({
      kind: 'passes',
      isFoul: false,
    });
  });

  it('is won by the last ball, and lost where that falls by a foul', () => {
    expect(turnOf('lowest', ['cue', 1], [REST, FALLS])).toEqual({ kind: 'won' });
    expect(turnOf('lowest', ['cue', 1], [FALLS, FALLS])).toEqual({ kind: 'lost' });
  });

  it('passes with the ball in hand after a foul, whatever falls', () => {
    const three = ['cue', 1, 2] as const;
    const fouls = [
      turnOf('lowest', three, [FALLS, rests(0.2, 0), rests(0.3, 0)]),
      turnOf('lowest', three, [REST, LOST, rests(0.3, 0)]),
      turnOf('lowest', three, [REST, FALLS, rests(0.3, 0)], [hits(2), RAIL]),
      turnOf('lowest', three, [REST, rests(0.2, 0), rests(0.3, 0)], []),
      turnOf('lowest', three, [REST, rests(0.2, 0), rests(0.3, 0)], [RAIL, hits(1)]),
      turnAfter('lowest', [at('cue', 0, 0), at(1, 0.3, 0)], { names: ['cue', 1] }, null),
    ];
    for (const foul of fouls) {
      expect(foul).toMatchObject({ kind: 'passes', isFoul: true });
      expect(foul.kind === 'passes' && foul.position.some(({ name }) => name === 'cue')).toBe(
        false,
      );
    }
  });

  it('is won by the eight once the group is gone, and lost by it before', () => {
    expect(turnOf('low', ['cue', 8, 11], [REST, FALLS, rests(0.3, 0)])).toEqual({ kind: 'won' });
    const early = [REST, rests(0.1, 0), FALLS, rests(0.3, 0)];
    expect(turnOf('low', ['cue', 1, 8, 11], early)).toEqual({ kind: 'lost' });
    const last = turnOf('low', ['cue', 1, 8], [REST, FALLS, rests(0.3, 0)]);
    expect(last).toMatchObject({ kind: 'goes-on' });
  });

  it('gives the other player the other group, or the same balls', () => {
    expect((['low', 'high', 'lowest', 'any'] as const).map(othersRule)).toEqual([
      'high',
      'low',
      'lowest',
      'any',
    ]);
  });
});

describe('the balls to go', () => {
  const lying = (...names: readonly BallName[]): Position =>
    names.map((name, place) => at(name, 0.1 * place, 0));

  it('are all that may fall, of a group with the eight on top', () => {
    expect(ballsToGo('any', lying('cue', 2, 8, 11))).toBe(3);
    expect(ballsToGo('lowest', lying('cue', 2, 8, 11))).toBe(3);
    expect(ballsToGo('low', lying('cue', 2, 3, 8, 11))).toBe(3);
    expect(ballsToGo('high', lying('cue', 2, 3, 8, 11))).toBe(2);
    expect(ballsToGo('low', lying('cue', 8, 11))).toBe(1);
    expect(ballsToGo('low', lying('cue', 2, 11))).toBe(1);
  });
});
