import { describe, expect, it } from 'vitest';
import { layOutButtView } from '../../../src/diagram/trial-butt';
import { layOutTrialLens } from '../../../src/diagram/trial-lens';
import { layOutTrialView } from '../../../src/diagram/trial-view';
import type { TrialName } from '../../../src/engine/fit/trials/trials';
import { TRIAL_NAMES } from '../../../src/engine/fit/trials/trials';
import { sceneOf } from '../../../src/ui/measure/trials/faces';
import { shotOf } from '../ui/measure/invented-trials';

const RADIUS_M = 0.028575;
const CANVAS = { widthPx: 360, heightPx: 480, textPx: 13 };
const viewOf = (trial: TrialName, step: Parameters<typeof sceneOf>[2] = 'set-up') =>
  layOutTrialView(sceneOf(shotOf(trial), RADIUS_M, step, 0.1), CANVAS);

describe('the drawing of a trial', () => {
  it.each(TRIAL_NAMES)('of %s lies wholly on the canvas', (trial) => {
    const { frame, balls } = viewOf(trial);
    expect(frame.x).toBeGreaterThanOrEqual(0);
    expect(frame.y).toBeGreaterThanOrEqual(0);
    expect(frame.x + frame.width).toBeLessThanOrEqual(CANVAS.widthPx);
    expect(frame.y + frame.height).toBeLessThanOrEqual(CANVAS.heightPx);
    for (const { circle } of balls) {
      expect(circle.cx).toBeGreaterThan(frame.x);
      expect(circle.cx).toBeLessThan(frame.x + frame.width);
      expect(circle.cy).toBeGreaterThan(frame.y);
      expect(circle.cy).toBeLessThan(frame.y + frame.height);
    }
  });

  it('has a table twice as long as wide, its far rail above', () => {
    const { bed, farLabel, nearLabel } = viewOf('line');
    expect(bed.height / bed.width).toBeCloseTo(2, 9);
    expect(farLabel?.y).toBeLessThan(bed.y);
    expect(nearLabel?.y).toBeGreaterThan(bed.y + bed.height);
  });

  it('puts seven diamonds on a long rail and three on a short one, an eighth of the bed apart', () => {
    const { diamonds, bed } = viewOf('line');
    expect(diamonds).toHaveLength(7 * 2 + 3 * 2);
    const left = diamonds.filter(({ x }) => x < bed.x).map(({ y }) => y);
    const steps = left.slice(1).map((y, i) => Math.abs(y - (left[i] ?? 0)));
    expect(steps).toHaveLength(6);
    for (const step of steps) expect(step).toBeCloseTo(bed.height / 8, 9);
  });

  it('points the aim at the middle of the far rail, and the path to the right of it', () => {
    const { aim, path, bed } = viewOf('line');
    expect(aim?.to.x).toBeCloseTo(bed.x + bed.width / 2, 9);
    expect(aim?.to.y).toBeCloseTo(bed.y, 9);
    // A tenth of a metre of a bed 1.27 m wide.
    expect((path?.to.x ?? 0) - (aim?.to.x ?? 0)).toBeCloseTo((0.1 / 1.27) * bed.width, 9);
  });

  it('lays the rule of a landing from the middle diamond, a whole mark at each diamond', () => {
    const { rule, bed, diamonds } = viewOf('line', 'landingM');
    const whole = rule.filter(({ isWhole }) => isWhole);
    expect(whole.map(({ diamonds: at }) => at)).toEqual([-1, 0, 1]);
    expect(whole.map(({ x }) => x)).toEqual(
      diamonds.filter(({ y }) => y < bed.y).map(({ x }) => expect.closeTo(x, 9)),
    );
  });

  it('puts the coins of the stop trial a ball apart on the right rail, the second further up', () => {
    const { coins, bed } = viewOf('stop');
    const [one, two] = coins;
    expect(one?.cx).toBeGreaterThan(bed.x + bed.width);
    // The view of it shows 0.55 of the bed's length.
    const pxPerM = bed.height / (0.55 * 2.54);
    expect((one?.cy ?? 0) - (two?.cy ?? 0)).toBeCloseTo(2 * RADIUS_M * pxPerM, 9);
  });

  it('rolls a ball up the table or down it', () => {
    const shot = shotOf('coast');
    const away = { ...shot, stroke: { ...shot.stroke, headingRad: 0 } };
    const scene = (one: typeof shot) => sceneOf(one, RADIUS_M, 'set-up').balls;
    expect(scene(away).map(({ at }) => at.yM)).toEqual([
      expect.closeTo(2.54 / 8, 9),
      expect.closeTo(2.54 / 8 + shot.setup.distanceM, 9),
    ]);
    const back = { ...shot, stroke: { ...shot.stroke, headingRad: Math.PI } };
    expect(scene(back)[0]?.at.yM).toBeCloseTo((7 / 8) * 2.54, 9);
  });

  it('shows close up what is between the balls of the stop trial', () => {
    const shot = shotOf('stop');
    const lens = layOutTrialLens(sceneOf(shot, RADIUS_M, 'set-up'));
    const { from, to } = lens?.gap ?? { from: { x: 0, y: 0 }, to: { x: 0, y: 0 } };
    expect(Math.hypot(to.x - from.x, to.y - from.y) * RADIUS_M).toBeCloseTo(shot.setup.gapM, 9);
  });
});

describe('the drawing of a raised cue', () => {
  it.each([10, 20, 40])('shows %d° as it is', (degrees) => {
    const { cue } = layOutButtView((degrees * Math.PI) / 180, CANVAS);
    const angle = Math.atan2(cue.from.y - cue.to.y, cue.to.x - cue.from.x);
    expect((angle * 180) / Math.PI).toBeCloseTo(degrees, 9);
  });
});
