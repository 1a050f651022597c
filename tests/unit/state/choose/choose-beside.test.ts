import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { openChoose } from './open-choose';

const WIDTH_M = 2 * DEFAULT_KIT.ballRadiusM;

describe('a ball close to another one', () => {
  it('puts none down within another one, and says which is in the way', async () => {
    const { model } = await openChoose();
    expect(model.place(5, 0.25, 0.59, false)).toMatchObject({ ok: false });
    expect(model.ballAt(5)).toBeNull();
    expect(model.problem.value).toBe('The 3 is in the way: Freeze to touch it.');
    model.place(5, -0.2, -0.6 + 0.9 * WIDTH_M, false);
    expect(model.problem.value).toBe('The cue ball is in the way: Freeze to touch it.');
    model.select(null);
    expect(model.problem.value).toBeNull();
    expect(model.place(5, 0.25, 0.6 - 1.001 * WIDTH_M, false)).toEqual({ ok: true });
  });

  it('lays a ball where it is tapped rather than snap it into another one', async () => {
    const { model } = await openChoose();
    model.place(5, 0.03, 0, false);
    expect(model.place(9, -0.03, 0, true)).toEqual({ ok: true });
    expect(model.ballAt(9)).toEqual({ name: 9, xM: -0.03, yM: 0 });
  });

  it('puts one down in the middle by a button, beside what lies there', async () => {
    const { model } = await openChoose();
    model.putDown(5);
    expect(model.ballAt(5)).toEqual({ name: 5, xM: 0, yM: 0 });
    expect(model.putDown(9)).toEqual({ ok: true });
    const nine = model.ballAt(9);
    expect(Math.hypot(nine?.xM ?? 0, nine?.yM ?? 0)).toBeCloseTo(WIDTH_M, 6);
  });

  it('nudges a ball as far as another one, and says what stops it', async () => {
    const { model } = await openChoose();
    model.place(5, 0.25, 0.6 - WIDTH_M - 0.004, false);
    expect(model.nudge(5, 0, 0.005)).toEqual({ ok: true });
    expect(model.neighbours.value).toEqual([]);
    model.select(5);
    expect(model.neighbours.value[0]).toMatchObject({ what: 3, isFrozen: true });
    expect(model.nudge(5, 0, 0.005)).toMatchObject({ ok: false });
    expect(model.problem.value).toBe('The 3 is in the way.');
    // Along its side a ball goes on, held off by a hair.
    expect(model.nudge(5, 0.005, 0)).toEqual({ ok: true });
  });

  it('tells what the ball selected lies beside, and how far off', async () => {
    const { model } = await openChoose();
    model.place(5, 0.25, 0.6 - WIDTH_M - 0.002, false);
    model.select(5);
    expect(model.neighbours.value[0]).toMatchObject({ what: 3, isFrozen: false });
    expect(model.neighbours.value[0]?.gapM).toBeCloseTo(0.002, 12);
    model.freeze(5);
    expect(model.neighbours.value[0]).toMatchObject({ what: 3, isFrozen: true });
    model.drag(5, 1, 0.2);
    model.endDrag();
    expect(model.neighbours.value[0]).toMatchObject({ what: 'cushion', isFrozen: true });
  });
});

describe('pockets out of reach', () => {
  it('are known for the ball to be played, and refused when chosen', async () => {
    const { model } = await openChoose();
    // The cue ball is below and to the left of the 3: it cannot be cut back past itself.
    expect([...model.closed.value]).toEqual(
      expect.arrayContaining([
        ['near-left', 'too-thin'],
        ['near-right', 'too-thin'],
      ]),
    );
    expect(model.closed.value.has('far-right')).toBe(false);
    for (const pocket of model.closed.value.keys()) {
      model.playInto(pocket);
      expect(model.shot.value).toMatchObject({ ok: false, reason: model.closed.value.get(pocket) });
    }
    model.playBall(null);
    expect(model.closed.value.size).toBe(0);
  });
});
