import { describe, expect, it } from 'vitest';
import { layOutRuler } from '../../../src/diagram/ball-ruler';

const CANVAS = { widthPx: 400, heightPx: 200, textPx: 13 };

describe('the ball-width ruler', () => {
  it('has its zero under the ball’s centre and a whole mark every ball width', () => {
    const ruler = layOutRuler({ cx: 210, cy: 80, r: 50 }, null, 130, CANVAS);
    const whole = ruler.ticks.filter(({ size }) => size === 'whole');
    expect(whole.map(({ x }) => x)).toEqual([10, 110, 210, 310]);
    expect(whole.map(({ balls }) => balls)).toEqual([-2, -1, 0, 1]);
  });

  it('marks quarters on a large ball and only halves on a small one', () => {
    const large = layOutRuler({ cx: 200, cy: 80, r: 50 }, null, 130, CANVAS);
    const small = layOutRuler({ cx: 200, cy: 80, r: 20 }, null, 130, CANVAS);
    expect(large.ticks.some(({ size }) => size === 'quarter')).toBe(true);
    expect(small.ticks.some(({ size }) => size === 'quarter')).toBe(false);
  });

  it('names the unit at one ball where there is room', () => {
    const at = (r: number) =>
      layOutRuler({ cx: 200, cy: 80, r }, null, 130, CANVAS).ticks.find(({ balls }) => balls === 1);
    expect(at(45)?.text).toBe('1 ball');
    expect(at(15)?.text).toBe('1');
  });

  it('names the ball’s own edges, half a ball either side of its centre', () => {
    const { ticks } = layOutRuler({ cx: 200, cy: 80, r: 45 }, null, 130, CANVAS);
    const edges = ticks.filter(({ text }) => text === 'edge').map(({ balls }) => balls);
    expect(edges).toEqual([-0.5, 0.5]);
  });

  it('names no edge where that would run into the ball’s figure', () => {
    for (let r = 20; r < 80; r += 1) {
      const { ticks } = layOutRuler({ cx: 200, cy: 80, r }, null, 130, CANVAS);
      const named = ticks.filter(({ text }) => text !== '');
      named.slice(1).forEach(({ x, text }, before) => {
        const other = named[before];
        // A letter of such text is about 7 px wide.
        const halves = ((text.length + (other?.text.length ?? 0)) * 7) / 2;
        expect(x - (other?.x ?? 0)).toBeGreaterThan(halves);
      });
    }
  });

  it('keeps its figures apart however many balls it spans', () => {
    for (const r of [2, 4, 8, 16, 32]) {
      const { ticks } = layOutRuler({ cx: 200, cy: 80, r }, null, 130, CANVAS);
      const at = ticks.filter(({ text }) => text !== '').map(({ x }) => x);
      const gaps = at.slice(1).map((x, index) => x - (at[index] ?? 0));
      expect(Math.min(...gaps)).toBeGreaterThan(CANVAS.textPx);
    }
  });

  it('leaves the words at its ends free of figures', () => {
    const { ticks } = layOutRuler({ cx: 200, cy: 80, r: 20 }, null, 130, CANVAS);
    const named = ticks.filter(({ text }) => text !== '').map(({ x }) => x);
    expect(Math.min(...named)).toBeGreaterThan(60);
    expect(Math.max(...named)).toBeLessThan(340);
    expect(ticks.length).toBeGreaterThan(named.length);
  });
});
