import { describe, expect, it } from 'vitest';
import { directGoal, type Goal } from '../../../../../src/engine/goal/goal';
import { foldWays } from '../../../../../src/state/choose/all-ways/fold-ways';
import { inOrder } from '../../../../../src/state/choose/all-ways/list-order';
import type { ShownPot, ShownSafety } from '../../../../../src/state/choose/all-ways/shown-way';

interface Invented {
  readonly worth?: number;
  readonly chance?: number;
  readonly goodPosition?: number;
  readonly clean?: number;
  readonly xM?: number;
  readonly side?: 'none' | 'left' | 'right';
}

const KICK: Goal = {
  kind: 'kick',
  ball: 3,
  pocket: 'far-left',
  via: [
    { cushion: 'left', by: 'cue' },
    { ball: 3, by: 'cue' },
  ],
};
const CUT = directGoal(3, 'far-right');

/** Invented: each rests in a place of its own. */
let count = 0;
function pot(goal: Goal, invented: Invented = {}): ShownPot {
  const { worth = 0.5, chance = 0.5, goodPosition = null, clean = 1, xM = count, side } = invented;
  const way = { side: side ?? 'none', arrival: 'roll', isDrag: false, speed: 'soft' } as const;
  const rest = { xM, yM: 0, sdM: 0.05, places: [] };
  const told = { goal, chance, goodPosition, clean, rest, way, worth: { worth } };
  return { key: `${count++}`, told: told as unknown as ShownPot['told'], fan: [] };
}

function safety(worth: number): ShownSafety {
  const told = { goal: { kind: 'safety' }, struck: { ball: 3 }, worth: { worth } };
  return { key: `${count++}`, told: told as unknown as ShownSafety['told'], fan: [] };
}

const keys = (ways: readonly { readonly key: string }[]) => ways.map(({ key }) => key);

describe('ways that are folded away', () => {
  it('are those of a kind far less good than the best of all, but for the best of the kind', () => {
    const sure = pot(CUT, { worth: 0.9 });
    const good = pot(CUT, { worth: 0.8 });
    const kicks = [0.6, 0.5, 0.4].map((worth) => pot(KICK, { worth }));
    const { rows, folded } = foldWays([sure, good, ...kicks], 'worth', true);
    expect(keys(rows)).toEqual(keys([sure, good, ...kicks.slice(0, 1)]));
    expect(folded).toEqual([{ kind: 'kick', ways: kicks.slice(1), areFar: true, areAlike: false }]);
  });

  it('are none where one row would only stand for another, or one kind was asked for', () => {
    const ways = [pot(CUT, { worth: 0.9 }), pot(KICK, { worth: 0.5 }), pot(KICK, { worth: 0.4 })];
    expect(foldWays(ways, 'worth', true).folded).toEqual([]);
    const kicks = [0.9, 0.3, 0.2].map((worth) => pot(KICK, { worth }));
    expect(foldWays(kicks, 'worth', false).rows).toEqual(kicks);
  });

  it('are by how often they go those that go less than half as often as the best', () => {
    const sure = pot(CUT, { chance: 0.9 });
    const kicks = [0.5, 0.46, 0.44, 0.1].map((chance) => pot(KICK, { chance }));
    const { rows, folded } = foldWays([sure, ...kicks, safety(0.6)], 'goes', true);
    expect(rows).toHaveLength(4);
    expect(folded.map(({ ways }) => keys(ways))).toEqual([keys(kicks.slice(2))]);
  });

  it('are those that leave the cue ball where one above does, by other side alone', () => {
    const right = pot(KICK, { side: 'right', xM: 0.2 });
    const left = pot(KICK, { side: 'left', xM: 0.25 });
    const elsewhere = pot(KICK, { side: 'left', xM: 0.4 });
    const other = pot({ ...KICK, pocket: 'near-left' }, { side: 'left', xM: 0.2 });
    const { rows, folded } = foldWays([right, left, elsewhere, other], 'worth', false);
    expect(rows).toEqual([right, elsewhere, other]);
    expect(folded).toEqual([{ kind: 'kick', ways: [left], areFar: false, areAlike: true }]);
  });
});

describe('the order of the list', () => {
  const wide = pot(CUT, { chance: 0.3, goodPosition: 0.1 });
  const near = pot(CUT, { chance: 0.1, goodPosition: 0.9 });
  const scratching = pot(KICK, { chance: 0.9, goodPosition: 0.05, clean: 0.2 });
  const safe = safety(0.9);

  it('is by the pot alone, whatever becomes of the cue ball, or by pot and zone', () => {
    const ways = [safe, wide, near, scratching];
    expect(inOrder(ways, 'worth')).toEqual(ways);
    expect(inOrder(ways, 'goes')).toEqual([scratching, wide, near, safe]);
    // 0.09, 0.045 and 0.03 of all strokes.
    expect(inOrder(ways, 'zone')).toEqual([near, scratching, wide, safe]);
  });
});
