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
  const rest = { xM: 0, yM: 0, sdM: 0.1, places: [] };
  const goal = { kind: 'safety' };
  const told = { goal, rest, way: {}, struck: { ball: 3, rest }, worth: { worth } };
  return { key: `${count++}`, told: told as unknown as ShownSafety['told'], fan: [] };
}

const keys = (ways: readonly { readonly key: string }[]) => ways.map(({ key }) => key);

describe('ways that are folded away', () => {
  it('are those of a kind far behind the best of all, but for the best of the kind', () => {
    const sure = pot(CUT, { worth: 0.9 });
    const good = pot(CUT, { worth: 0.7 });
    const kicks = [0.6, 0.5, 0.4].map((worth) => pot(KICK, { worth }));
    const safe = [0.66, 0.65].map(safety);
    const { rows, folded } = foldWays([sure, good, ...kicks, ...safe], 'worth', true);
    // Three quarters of 0.9 is 0.675.
    expect(keys(rows)).toEqual(keys([sure, good, ...kicks.slice(0, 1), ...safe.slice(0, 1)]));
    expect([...folded]).toEqual([
      ['kick', kicks.slice(1)],
      ['safety', safe.slice(1)],
    ]);
  });

  it('are of a kind that was asked for none for being far behind', () => {
    const kicks = [0.9, 0.3, 0.2].map((worth) => pot(KICK, { worth }));
    expect(foldWays(kicks, 'worth', false).rows).toEqual(kicks);
  });

  it('are by how often they go those that go far less often, and safeties but for one', () => {
    const sure = pot(CUT, { chance: 0.8 });
    const kicks = [0.7, 0.61, 0.59, 0.1].map((chance) => pot(KICK, { chance }));
    const safe = [0.6, 0.5].map(safety);
    const { rows, folded } = foldWays([sure, ...kicks, ...safe], 'goes', true);
    expect(keys(rows)).toEqual(keys([sure, ...kicks.slice(0, 2), ...safe.slice(0, 1)]));
    expect([...folded.keys()]).toEqual(['kick', 'safety']);
  });

  it('are those that leave the cue ball where one above does, by other side alone', () => {
    const right = pot(KICK, { side: 'right', xM: 0.2 });
    const left = pot(KICK, { side: 'left', xM: 0.25 });
    const elsewhere = pot(KICK, { side: 'left', xM: 0.4 });
    const other = pot({ ...KICK, pocket: 'near-left' }, { side: 'left', xM: 0.2 });
    const { rows, folded } = foldWays([right, left, elsewhere, other], 'worth', false);
    expect(rows).toEqual([right, elsewhere, other]);
    expect([...folded]).toEqual([['kick', [left]]]);
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
