import { describe, expect, it } from 'vitest';
import { ballPaths, fallsAtS } from '../../../src/diagram/ball-paths';
import { layOutWayPicture } from '../../../src/diagram/way-picture';
import { laidTable, playLaid } from '../../../src/engine/goal/laid-table';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { NINE_FOOT } from '../../harness/invented-positions';

/** Invented: up the left side at the 3, which hangs over the far left corner; the 9 is not touched. */
const BALLS = [
  { name: 'cue', xM: -0.4, yM: 0.6 },
  { name: 9, xM: 0.4, yM: -0.8 },
  { name: 3, xM: -0.58, yM: 1.215 },
] as const;
const HEADING_RAD = Math.atan2(-0.18, 0.615);

function played() {
  const stroke = { aimRad: HEADING_RAD, side: 0, height: 0, elevationRad: 0.05, speedMps: 1.5 };
  const play = playLaid(laidTable(BALLS, NINE_FOOT), stroke, DEFAULT_KIT);
  if (play === null) throw new Error('it can be played');
  return play;
}

/** Where a path begins and ends. */
const ends = (path: string) => {
  const at = path.slice(1).split('L');
  return [at[0], at.at(-1)].map((point) => (point ?? '').split(' ').map(Number));
};

describe('paths of balls', () => {
  const map = {
    toPoint: ({ xM, yM }: { xM: number; yM: number }) => ({ x: 100 * xM, y: 100 * yM }),
  };

  it('are drawn of those that move, each from where it lay', () => {
    const paths = ballPaths(played(), map);
    expect(paths.map(({ ball }) => ball)).toEqual([0, 2]);
    expect(ends(paths[0]?.path ?? '')[0]).toEqual([-40, 60]);
    expect(ends(paths[1]?.path ?? '')[0]).toEqual([-58, 121.5]);
  });

  it('end at a moment, where the ball is by then', () => {
    const play = played();
    const falls = fallsAtS(play, 2) ?? Number.NaN;
    expect(falls).toBeGreaterThan(0);
    expect(fallsAtS(play, 1)).toBeNull();
    // At the first hit the cue ball is a ball's width short of the 3, and the 3 has not moved.
    const hit = play.events.find(({ kind }) => kind === 'hits-ball');
    const paths = ballPaths(play, map, hit?.timeS ?? 0);
    expect(paths.map(({ ball }) => ball)).toEqual([0]);
    const [x = 0, y = 0] = ends(paths[0]?.path ?? '')[1] ?? [];
    expect(Math.hypot(x + 58, y - 121.5)).toBeCloseTo(100 * 2 * DEFAULT_KIT.ballRadiusM, 0);
  });

  it.each([
    [84, 46],
    [46, 84],
  ])('lie within a small table of %d by %d', (widthPx, heightPx) => {
    const view = layOutWayPicture(
      { lengthM: 2.54, widthM: 1.27, balls: BALLS, play: played(), falls: 2 },
      { widthPx, heightPx },
    );
    expect(view.paths.map(({ ball }) => ball)).toEqual([0, 2]);
    const numbers = view.paths.flatMap(({ path }) =>
      path
        .slice(1)
        .split('L')
        .map((point) => point.split(' ').map(Number)),
    );
    for (const [x = Number.NaN, y = Number.NaN] of numbers) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(widthPx);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(heightPx);
    }
  });
});
