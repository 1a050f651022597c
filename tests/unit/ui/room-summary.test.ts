import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import type { AppModels } from '../../../src/ui/app-models';
import { roomSummary } from '../../../src/ui/shot/room-summary';
import { STUDENT } from '../../store/invented-players';

/** As much of Shot as tells a chance: of a share, and from one end of its range to the other. */
function assessed(
  share: number,
  ends: readonly [low: number, high: number] | null,
  isKnown = true,
) {
  const chance = { share, error: 0.02 };
  return {
    room: {
      problem: signal(null),
      room: signal({
        windows: {},
        certainty: { contributions: [], aimSdRad: 0 },
        chance,
        chanceOnKnownKit: chance,
        range: ends && { low: ends[0], high: ends[1] },
      }),
      isMeasured: () => false,
    },
    shot: { lastAnswer: signal(null) },
    desk: { preferences: signal({ lengthUnit: 'mm' }) },
    player: { isKnown: signal(isKnown), inPlay: signal({ ...STUDENT, name: 'You' }) },
  } as unknown as AppModels;
}

describe('how often a shot goes', () => {
  it.each([
    [0.61, [0.53, 0.72], '6 in 10 for you, 5 to 7'],
    // As wide as can be: the figure alone would look firm.
    [0.64, [0.08, 0.97], '6 in 10 for you, 1 to 10'],
    [0.96, [0.7, 1], 'about 19 in 20 for you, 7 to 10 in 10'],
    [0.02, [0.01, 0.33], 'less than 1 in 20 for you, 0 to 3 in 10'],
    [0.62, [0.6, 0.64], '6 in 10 for you'],
    [0.62, null, '6 in 10 for you'],
  ] as const)('of %f, %j, is "%s", to eyes and ears alike', (share, ends, words) => {
    const summary = roomSummary(assessed(share, ends));
    expect(`${summary?.chance}${summary?.range}`).toBe(words);
    expect(summary?.spoken).toBe(`goes ${words}`);
  });

  it('is told without a figure of whom nothing is known', () => {
    expect(roomSummary(assessed(0.62, [0.1, 0.9], false))).toMatchObject({
      chance: 'fair for most',
      range: '',
      spoken: 'is fair for most',
    });
  });
});
