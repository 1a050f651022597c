import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { Stroke } from '../../../../src/engine/stroke/stroke';
import { ballAt } from '../../../../src/engine/table/ball-at';
import { playTable, type TableOptions } from '../../../../src/engine/table/play-table';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import type { PlacedBall, TablePlay } from '../../../../src/engine/table/table-play';
import { tableShape } from '../../../../src/engine/table/table-shape';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const R = DEFAULT_KIT.ballRadiusM;
const DEG = Math.PI / 180;

/** A level cue at the ball's centre, straight up the table, unless said otherwise. */
const stroke = (changes: Partial<Stroke>): Stroke => ({
  aimRad: 0,
  side: 0,
  height: 0,
  elevationRad: 0,
  speedMps: 1,
  ...changes,
});

function play(
  balls: readonly PlacedBall[],
  changes: Partial<Stroke>,
  options: TableOptions = {},
): TablePlay {
  const result = playTable(balls, stroke(changes), DEFAULT_KIT, SHAPE, options);
  if (!result.ok) throw new RangeError(result.reason);
  return result;
}

const at = (xM: number, yM: number): PlacedBall => ({ xM, yM });
const outcomes = ({ balls }: TablePlay) => balls.map(({ outcome }) => outcome.kind);
const kinds = ({ events }: TablePlay) => events.map(({ kind }) => kind);

/** Centre of a ball that rests against the nose of the right-hand cushions, m. */
const FROZEN_X = 0.635 - R * Math.sqrt(1 - 0.27 ** 2);

describe('pockets', () => {
  it('take a ball that rolls into the middle of a corner', () => {
    const { balls } = play([at(0, -0.635)], { aimRad: -135 * DEG });
    expect(balls[0]?.outcome).toMatchObject({ kind: 'pocketed', pocket: 'near-left' });
  });

  it('take a ball that rolls straight into a side', () => {
    const { balls } = play([at(0, 0)], { aimRad: 90 * DEG });
    expect(balls[0]?.outcome).toMatchObject({ kind: 'pocketed', pocket: 'middle-right' });
  });

  it('take a ball as its centre comes over the edge: 4.8 mm beyond the noses at a side', () => {
    const { events } = play([at(0, 0)], { aimRad: 90 * DEG });
    expect(events.at(-1)).toMatchObject({ kind: 'pocketed' });
    expect(events.at(-1)?.xM).toBeCloseTo(0.6398, 9);
  });

  // Common practice, no source.
  it('spit out a ball that is driven along the rail into a corner, and take a soft one', () => {
    const rattled = play([at(FROZEN_X - 0.004, 0.3)], { speedMps: 4, aimRad: 1.8 * DEG });
    const jaws = rattled.events.filter((event) => event.kind === 'hits-cushion');
    expect(jaws.filter(({ part }) => part !== 'nose').length).toBeGreaterThan(1);
    expect(outcomes(rattled)).toEqual(['rests']);
    expect(outcomes(play([at(FROZEN_X - 0.004, 0.3)], { speedMps: 1.3 }))).toEqual(['pocketed']);
  });

  it('leave a ball hanging that stops between mouth and edge', () => {
    const [xM, yM] = [0.594 + 0.02, 1.229 + 0.02];
    const { balls } = play([at(0, 0), at(xM, yM)], { aimRad: Math.PI, speedMps: 0.3 });
    expect(balls[1]?.outcome).toEqual({ kind: 'hangs', pocket: 'far-right', xM, yM });
  });

  it('take no more part once a ball is in: it meets nothing after that', () => {
    const { events, balls } = play([at(0, 0)], { aimRad: 90 * DEG, speedMps: 3 });
    expect(events.at(-1)?.kind).toBe('pocketed');
    const timeS = events.at(-1)?.timeS ?? Number.NaN;
    expect(balls.map((run) => ballAt(run, timeS))).toEqual([null]);
  });
});

describe('balls in the air', () => {
  // Free fall: 0.1 m of level flight is over a ball of 57 mm where the cue ball rises that high.
  it('jump a ball', () => {
    const changes = { elevationRad: 50 * DEG, speedMps: 3 };
    const jumped = play([at(0, -0.9), at(0, -0.7)], changes);
    expect(jumped.events[0]).toMatchObject({ kind: 'lands', ball: 0 });
    expect(jumped.events[0]?.yM).toBeGreaterThan(-0.64);
    expect(jumped.balls[1]?.phases[0]?.startS ?? 9).toBeGreaterThan(jumped.events[0]?.timeS ?? 9);
  });

  it('leave the table over a cushion that they pass higher than its nose', () => {
    const { balls } = play([at(0, 0.9)], { elevationRad: 60 * DEG, speedMps: 3 });
    expect(balls[0]?.outcome).toMatchObject({ kind: 'off-table' });
    expect(balls[0]?.phases.at(-1)?.motion).toBe('flying');
  });

  it('fall into a pocket that they pass lower than the noses', () => {
    const low = play([at(0, 0)], { aimRad: 90 * DEG, elevationRad: 3 * DEG, speedMps: 2 });
    expect(outcomes(low)).toEqual(['pocketed']);
  });
});

describe('balls that touch', () => {
  it('pass a blow on along a row: the last goes, the others hardly move', () => {
    const row = [0, 1, 2].map((count) => at(0, 2 * R * count));
    const { balls } = play([at(0, -0.3), ...row], { speedMps: 0.5 });
    const movedM = balls.map(({ from, outcome }) =>
      outcome.kind === 'rests' ? Math.hypot(outcome.xM - from.xM, outcome.yM - from.yM) : 9,
    );
    expect(movedM[3]).toBeGreaterThan(5 * (movedM[1] ?? 9));
    expect(movedM[3]).toBeGreaterThan(5 * (movedM[2] ?? 9));
  });

  it('play on from a frozen cue ball', () => {
    const { events } = play([at(0, 0), at(0, 2 * R)], {});
    expect(events[0]).toMatchObject({ kind: 'hits-ball', timeS: 0, ball: 0, other: 1 });
  });

  it('come away from a cushion that one of them is frozen to', () => {
    const result = play([at(FROZEN_X - 0.3, 0.4), at(FROZEN_X, 0.4)], { aimRad: 90 * DEG });
    expect(result.complete).toBe(true);
    expect(kinds(result).slice(0, 4)).toContain('hits-cushion');
  });

  it('do not stop the clock while spin holds one against another on a cushion', () => {
    const balls = [at(FROZEN_X - 2 * R, 0.4), at(FROZEN_X, 0.4)];
    const result = play(balls, { aimRad: 90 * DEG, height: 0.45, speedMps: 4 });
    expect(result.complete).toBe(true);
    expect(result.events.length).toBeLessThan(200);
  });
});

describe('what is told', () => {
  it('has each ball’s phases from the first to rest', () => {
    const { balls, endS } = play([at(0, -0.6), at(0, 0)], { speedMps: 0.6 });
    expect(balls[0]?.phases.at(-1)?.motion).toBe('rolling');
    expect(balls[1]?.phases[0]?.start).toMatchObject({ xM: 0, yM: 0 });
    expect(endS).toBeGreaterThan(1);
  });

  it('is the same without the phases, where only the ends are asked', () => {
    for (const elevationRad of [0, 0.1]) {
      const balls = [at(0, -0.8), at(0.02, 0.3), at(-0.2, 0.5)];
      const changes = { elevationRad, side: 0.2, speedMps: 3.5 };
      const [whole, ends] = [play(balls, changes), play(balls, changes, { endsOnly: true })];
      expect(ends.events).toEqual(whole.events);
      expect(ends.endS).toBe(whole.endS);
      expect(ends.balls.map(({ outcome }) => outcome)).toEqual(
        whole.balls.map(({ outcome }) => outcome),
      );
      expect(ends.balls.map(({ phases }) => phases)).toEqual([[], [], []]);
    }
  });

  it('is unfinished where the cap on events is met, and says so', () => {
    const result = play([at(0, -0.6), at(0, 0)], { speedMps: 3 }, { mostEvents: 3 });
    expect(result.complete).toBe(false);
    expect(outcomes(result)).toEqual(['unfinished', 'unfinished']);
  });
});

describe('what cannot be played', () => {
  const refused = (balls: readonly PlacedBall[], changes: Partial<Stroke>, kit = DEFAULT_KIT) => {
    const result = playTable(balls, stroke(changes), kit, SHAPE);
    return result.ok ? 'played' : result.reason;
  };
  const tilted = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0.01, rightM_per_M: 0.01 } };

  it.each([
    ['no-balls', [], {}, DEFAULT_KIT],
    ['out-of-range', [at(0, 0)], { speedMps: Number.NaN }, DEFAULT_KIT],
    ['out-of-range', [at(0, 0)], {}, { ...DEFAULT_KIT, slideFriction: 9 }],
    ['beyond-miscue-limit', [at(0, 0)], { side: 0.6 }, DEFAULT_KIT],
    ['never-stops', [at(0, 0)], {}, { ...tilted, rollFriction: 0.002 }],
    ['off-bed', [at(0, 0), at(0.62, 0.5)], {}, DEFAULT_KIT],
    ['off-bed', [at(Number.NaN, 0)], {}, DEFAULT_KIT],
    ['off-bed', [at(0.66, 0)], {}, DEFAULT_KIT],
    ['overlap', [at(0, 0), at(0.05, 0)], {}, DEFAULT_KIT],
  ])('%s', (reason, balls, changes, kit) => {
    expect(refused(balls, changes, kit)).toBe(reason);
  });
});
