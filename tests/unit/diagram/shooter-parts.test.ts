import { describe, expect, it } from 'vitest';
import { partsAt, partsOf, type ShooterPart } from '../../../src/diagram/shooter-parts';
import { layOutShooterView } from '../../../src/diagram/shooter-view';

const CANVAS = { widthPx: 366, heightPx: 320, textPx: 13 };
const TIP = { side: -0.3, height: 0, limit: 0.5, domeRadii: 1 / 3, widthRadii: 0.45 };
const SCENE = {
  ballRadiusM: 0.028575,
  distanceM: 1,
  cutRad: 0.4,
  lead: 'object-ball' as const,
  tip: TIP,
  marks: {
    aimOffsetM: -0.02,
    aimOnObjectBallM: -0.045,
    stickOffsetM: -0.032,
    stickOnObjectBallM: -0.057,
  },
  bandRad: { low: -0.024, high: -0.017 },
  sureRad: { low: -0.03, high: -0.01 },
  held: null,
};
const HELD = {
  aimOffsetM: 0,
  aimOnObjectBallM: -0.02,
  stickOffsetM: 0.01,
  stickOnObjectBallM: -0.01,
  tip: { ...TIP, side: 0.2 },
};
const view = layOutShooterView({ ...SCENE, held: HELD }, CANVAS);
const firstAt = (x: number, y: number) => partsAt(view, { x, y })[0];
const midY = view.objectBall.cy;

describe('a tap on the drawing from behind the cue', () => {
  it('means the line it touches before what lies behind', () => {
    expect(firstAt(view.aim?.x ?? 0, midY)).toBe('aim');
    expect(firstAt(view.stick?.x ?? 0, midY)).toBe('cue');
    expect(firstAt(view.held?.aimX ?? 0, midY)).toBe('held');
    expect(firstAt(view.objectBall.cx + view.objectBall.r * 0.7, midY)).toBe('object-ball');
  });

  it('means the tip, the cue or the ball in front', () => {
    const { near } = view;
    if (!near) throw new Error('nothing is drawn in front');
    expect(firstAt(near.tip.cx, near.tip.cy)).toBe('tip');
    expect(firstAt(near.ball.cx + near.ball.r * 0.9, near.ball.cy + 4)).toBe('cue-ball');
    const [, b, c] = near.lines?.shaft ?? [];
    expect(firstAt(((b?.x ?? 0) + (c?.x ?? 0)) / 2, (b?.y ?? 0) - 8)).toBe('cue');
  });

  it('comes to both bands by tapping on', () => {
    const parts = partsAt(view, { x: view.aim?.x ?? 0, y: midY });
    expect(parts).toEqual(expect.arrayContaining<ShooterPart>(['aim', 'band', 'haze']));
  });

  it('means the part whose name it touches', () => {
    const parts = view.names.map(({ part }) => part);
    expect(parts).toEqual(['aim', 'cue', 'object-ball', 'ghost-ball', 'band', 'haze']);
    for (const { part, box } of view.names) {
      expect(firstAt((box.fromX + box.toX) / 2, (box.fromY + box.toY) / 2)).toBe(part);
    }
  });

  it('means nothing far from everything', () => {
    expect(partsAt(view, { x: 4, y: CANVAS.heightPx - 4 })).toEqual([]);
  });

  it('can be about each part that is drawn and no other', () => {
    expect(partsOf(view)).toHaveLength(10);
    const bare = { ...SCENE, marks: null, bandRad: null, sureRad: null };
    expect(partsOf(layOutShooterView(bare, CANVAS))).toEqual([
      'object-ball',
      'ghost-ball',
      'cue-ball',
      'tip',
      'limit',
    ]);
  });
});
