import { describe, expect, it } from 'vitest';
import { answerLine } from '../../../src/headless/answer-line';

const SHOT = {
  id: 7,
  distanceM: 1.15,
  cutDeg: 24,
  side: -0.4,
  height: 0,
  elevationDeg: 3,
  speedMps: 1.8,
};
const POCKET = { distanceM: 0.8, mouthM: 0.116 };

const ask = (more: object) => JSON.parse(answerLine(JSON.stringify({ ...SHOT, ...more }), 1));

describe('a request that wants more than the aim', () => {
  it('is answered with what it wants, and nothing else', () => {
    const answer = ask({ want: ['certainty'] });
    expect(answer.certainty.aimSdDeg).toBeGreaterThan(0);
    expect(answer).not.toHaveProperty('chance');
    expect(ask({})).not.toHaveProperty('certainty');
  });

  it('gets windows that hold the present values, in the units of the request', () => {
    const { forgives, aimAngleDeg } = ask({ want: ['forgives'], target: POCKET });
    const present = { ...SHOT, aimAngleDeg };
    for (const input of ['aimAngleDeg', 'speedMps', 'side', 'height', 'elevationDeg'] as const) {
      expect(forgives[input].low.value).toBeLessThan(present[input]);
      expect(forgives[input].high.value).toBeGreaterThan(present[input]);
    }
    expect(forgives.aimAngleDeg.objectBallDegPerUnit).toBeLessThan(-10);
  });

  it('gets a window and a slope one way alone where the other way the tip would slip', () => {
    const limit = { side: 0.3, height: 0.4, speedMps: 2.5, want: ['forgives'], target: POCKET };
    const { forgives } = ask(limit);
    for (const input of ['side', 'height'] as const) {
      const { low, high, objectBallDegPerUnit } = forgives[input];
      expect(high.value - limit[input]).toBeLessThan(1e-8);
      expect(low.value).toBeLessThan(limit[input] - 0.001);
      expect(['thin', 'full']).toContain(low.endedBy);
      const inside = ask({ ...limit, [input]: limit[input] - 1e-4 }).forgives[input];
      const ratio = objectBallDegPerUnit / inside.objectBallDegPerUnit;
      expect(ratio).toBeGreaterThan(0.9);
      expect(ratio).toBeLessThan(1.1);
    }
  });

  it('has no slope where a hair either way loses the ball', () => {
    // Within the rounding that the miscue limit allows, and next to nothing of it left.
    const side = 0.5 * (1 + 0.99999e-9);
    const { forgives } = ask({ side, speedMps: 2.5, want: ['forgives'], target: POCKET });
    expect(forgives.height.objectBallDegPerUnit).toBeNull();
    expect(forgives.side.objectBallDegPerUnit).toEqual(expect.any(Number));
  });

  it('takes an angle for a target, and a wider one forgives more', () => {
    const width = (halfAngleDeg: number) => {
      const { forgives } = ask({ want: ['forgives'], target: { halfAngleDeg } });
      return forgives.speedMps.high.value - forgives.speedMps.low.value;
    };
    expect(width(4)).toBeGreaterThan(width(1));
  });

  it('tells that nothing goes where the object ball stops short of the mouth', () => {
    const soft = { speedMps: 1, want: ['forgives'], target: { distanceM: 3, mouthM: 0.116 } };
    expect(ask(soft)).toMatchObject({ ok: false, reason: 'object-ball-cannot-reach' });
  });

  it('names the quantity that is known worst, and none that is known exactly', () => {
    const known = { massRatio: 0 };
    const [worst] = ask({ want: ['certainty'] }).certainty.contributions;
    expect(worst.quantity).toBe('massRatio');
    const { contributions } = ask({ want: ['certainty'], kitSd: known }).certainty;
    expect(contributions.map((share: { quantity: string }) => share.quantity)).not.toContain(
      'massRatio',
    );
  });

  it('gives a steadier player the better chance', () => {
    const chance = (directionDeg: number) =>
      ask({ want: ['chance'], target: POCKET, stroke: { directionDeg } }).chance.share;
    expect(chance(0.1)).toBeGreaterThan(chance(1));
  });

  it.each([
    [{ want: 'chance' }, 'want'],
    [{ want: ['luck'] }, 'want'],
    [{ want: ['chance'] }, 'target'],
    [{ want: ['forgives'], target: { distanceM: 1 } }, 'target'],
    [{ want: ['forgives'], target: { distanceM: 1, mouthM: 0.05 } }, 'target'],
    [{ want: ['forgives'], target: { halfAngleDeg: 'wide' } }, 'target'],
    [{ want: ['chance'], target: POCKET, stroke: { directionDeg: 0 } }, 'stroke'],
    [{ want: ['chance'], target: POCKET, stroke: { together: 2 } }, 'stroke'],
    [{ want: ['certainty'], kitSd: { massRatio: -1 } }, 'kitSd'],
    [{ want: ['certainty'], kitSd: { rollFriction: 'little' } }, 'kitSd'],
  ])('is refused by name for %j', (more, field) => {
    expect(ask(more)).toMatchObject({ id: 7, ok: false, reason: 'out-of-range', field });
  });
});
