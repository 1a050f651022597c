import { describe, expect, it } from 'vitest';
import { layOutPicture } from '../../../src/diagram/table-picture';
import { CUT, EMPTY } from '../ui/choose/invented-choose';

const SIZE = { widthPx: 92, heightPx: 52 };

describe('the picture of a position', () => {
  it('has every ball on the bed, the cue ball told from the others', () => {
    const { balls, bed } = layOutPicture(CUT, SIZE);
    expect(balls).toHaveLength(CUT.balls.length);
    expect(balls.filter(({ isCue }) => isCue)).toHaveLength(1);
    for (const { cx, cy } of balls) {
      expect(cx).toBeGreaterThan(bed.x);
      expect(cx).toBeLessThan(bed.x + bed.width);
      expect(cy).toBeGreaterThan(bed.y);
      expect(cy).toBeLessThan(bed.y + bed.height);
    }
  });

  it('lies on its side, a far ball right of a near one, six holes about it', () => {
    const { balls, holes, frame } = layOutPicture(CUT, SIZE);
    const [cue, three] = balls;
    expect(three?.cx).toBeGreaterThan(cue?.cx ?? Number.NaN);
    expect(new Set(holes.map(({ cx, cy }) => `${cx} ${cy}`)).size).toBe(6);
    expect(frame.width).toBeLessThanOrEqual(SIZE.widthPx);
    expect(frame.height).toBeLessThanOrEqual(SIZE.heightPx);
  });

  it('draws the way from the cue ball over the ball to its pocket, and none while none is chosen', () => {
    const { path, balls, holes } = layOutPicture(CUT, SIZE);
    const points = path
      .slice(1)
      .split('L')
      .map((point) => point.split(' ').map(Number));
    // Far and right, with the break end on the left, is below on the right.
    const corner = holes.reduce((a, b) => (b.cx + b.cy > a.cx + a.cy ? b : a));
    const [cue, three] = balls;
    const expected = [cue, three, corner].map((one) => [one?.cx ?? 0, one?.cy ?? 0]);
    expect(points).toHaveLength(3);
    for (const [at, [x, y]] of expected.entries()) {
      expect(points[at]?.[0]).toBeCloseTo(x ?? 0, 0);
      expect(points[at]?.[1]).toBeCloseTo(y ?? 0, 0);
    }
    expect(layOutPicture(EMPTY, SIZE).path).toBe('');
    const { goal } = CUT;
    expect(layOutPicture({ ...CUT, goal: { ...goal, pocket: null } }, SIZE).path).toBe('');
  });
});
