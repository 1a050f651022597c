import { describe, expect, it } from 'vitest';
import { fallingWay } from '../../../../src/engine/goal/falling-way';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import type { Position } from '../../../../src/engine/lie/position';
import {
  type PocketChance,
  type PocketsQuestion,
  pocketChances,
} from '../../../../src/engine/plan/pocket-chances';
import { INVENTED_PROFILES } from '../../../../src/engine/room/stroke-profile';
import type { PocketName } from '../../../../src/engine/table/pocket-shape';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);

function asked(position: Position): PocketsQuestion {
  return {
    position,
    goal: { kind: 'pot', ball: 1, via: [] },
    shape: SHAPE,
    kit: DEFAULT_KIT,
    spread: UNMEASURED,
    profile: INVENTED_PROFILES.club,
  };
}

function chancesOf(position: Position): ReadonlyMap<PocketName, PocketChance> {
  return new Map(pocketChances(asked(position)).map((one) => [one.pocket, one]));
}

const shareOf = (position: Position, pocket: PocketName) =>
  chancesOf(position).get(pocket)?.share ?? Number.NaN;

/** On the line from a corner of the bed to its middle, so far from the corner, m. */
const fromCorner = (awayM: number) => ({
  xM: 0.635 - awayM * Math.SQRT1_2,
  yM: 1.27 - awayM * Math.SQRT1_2,
});
/** Straight into the far right corner, the cue ball half a metre behind. */
const straight = (awayM: number): Position => [
  { name: 'cue', ...fromCorner(awayM + 0.5) },
  { name: 1, ...fromCorner(awayM) },
];

describe('the chance of every pocket for one ball', () => {
  it('tells something of all six, of each but once', () => {
    const told = pocketChances(asked(straight(0.4))).map(({ pocket }) => pocket);
    expect([...told].sort()).toEqual(SHAPE.pockets.map(({ name }) => name).sort());
  });

  it('is the likelier the nearer the ball lies to the pocket', () => {
    const [near, middling, far] = [0.2, 0.5, 0.85].map((awayM) =>
      shareOf(straight(awayM), 'far-right'),
    );
    expect(near).toBeGreaterThan(middling ?? Number.NaN);
    expect(middling).toBeGreaterThan(far ?? Number.NaN);
    expect(near).toBeLessThanOrEqual(1);
    expect(far).toBeGreaterThan(0);
  });

  it('is the same for a position and its mirror image, left and right exchanged', () => {
    const lie: Position = [
      { name: 'cue', xM: -0.1, yM: -0.4 },
      { name: 1, xM: 0.2, yM: 0.5 },
      { name: 2, xM: 0.4, yM: 0.9 },
    ];
    const mirrored = lie.map(({ name, xM, yM }) => ({ name, xM: -xM, yM }));
    const other = chancesOf(mirrored);
    const swapped = (name: string) =>
      (name.endsWith('left')
        ? name.replace('left', 'right')
        : name.replace('right', 'left')) as PocketName;
    for (const [pocket, chance] of chancesOf(lie)) {
      const twin = other.get(swapped(pocket));
      if (chance.share === null) expect(twin).toMatchObject({ share: null });
      else expect(twin?.share).toBeCloseTo(chance.share, 6);
    }
  });

  it('says why it does not go: too thin, or what is in the way', () => {
    const between = { name: 5, ...fromCorner(0.2) };
    const told = chancesOf([...straight(0.5), between]);
    expect(told.get('far-right')).toMatchObject({ why: { reason: 'in-the-way', what: 5 } });
    // Behind the ball as the cue ball sees it: more than a right angle.
    expect(told.get('near-left')).toMatchObject({ why: { reason: 'too-thin' } });
  });

  it('is empty without a cue ball, and where the ball is not on the table', () => {
    expect(pocketChances(asked(straight(0.4).slice(1)))).toEqual([]);
    expect(pocketChances(asked(straight(0.4).slice(0, 1)))).toEqual([]);
  });

  it('looks once at what of each pocket is open', () => {
    let looks = 0;
    pocketChances(asked(straight(0.4)), (...of) => {
      looks++;
      return fallingWay(...of);
    });
    expect(looks).toBe(6);
  });
});
