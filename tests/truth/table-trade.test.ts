import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { ballAt } from '../../src/engine/table/ball-at';
import { playTable } from '../../src/engine/table/play-table';
import { WPA_POCKETS } from '../../src/engine/table/pocket-standard';
import type { PlacedBall, TablePlay } from '../../src/engine/table/table-play';
import { tableShape } from '../../src/engine/table/table-shape';

const SHAPE = tableShape(2.54, 1.27, WPA_POCKETS);
const DEG = Math.PI / 180;
const LEVEL: Stroke = { aimRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 2 };

function play(balls: readonly PlacedBall[], stroke: Partial<Stroke>, kit = DEFAULT_KIT): TablePlay {
  const result = playTable(balls, { ...LEVEL, ...stroke }, kit, SHAPE);
  if (!result.ok) throw new RangeError(result.reason);
  return result;
}

/** Where the cue ball next meets a cushion after its first, m. */
function secondCushion(play: TablePlay): { readonly xM: number; readonly yM: number } {
  const hit = play.events.filter(({ kind, ball }) => kind === 'hits-cushion' && ball === 0)[1];
  if (hit === undefined) throw new RangeError('the ball meets one cushion only');
  return hit;
}

// All of these: common practice, no source.
describe('what players know of a table', () => {
  // Up the table and to the right, off the right-hand cushion: there left is running side.
  const bank = (side: number) =>
    secondCushion(play([{ xM: -0.3, yM: -0.6 }], { aimRad: 70 * DEG, side, speedMps: 2.5 })).yM;

  it('running side lengthens a bank, and reverse side shortens it', () => {
    expect(bank(-0.3)).toBeGreaterThan(bank(0) + 0.1);
    expect(bank(0.3)).toBeLessThan(bank(0) - 0.05);
  });

  it('a rolling ball leaves a cushion steeper than it came, and bends back', () => {
    const { balls, events } = play([{ xM: -0.5, yM: -1 }], { aimRad: 45 * DEG, height: 0.4 });
    const [cueBall] = balls;
    const hit = events.find(({ kind }) => kind === 'hits-cushion');
    const off = cueBall?.phases.findIndex(({ startS }) => startS === hit?.timeS) ?? -1;
    const [into, just] = [cueBall?.phases[off - 1], cueBall?.phases[off]?.start];
    const rolling = cueBall?.phases.slice(off).find(({ motion }) => motion === 'rolling')?.start;
    expect(into?.motion).toBe('rolling');
    const fromRail = (ball: { vx: number; vy: number } | undefined) =>
      ball === undefined ? Number.NaN : Math.atan2(Math.abs(ball.vx), ball.vy) / DEG;
    expect(fromRail(just)).toBeGreaterThan(fromRail(into?.start) + 2);
    expect(fromRail(rolling)).toBeLessThan(fromRail(just) - 5);
  });

  it('a full hit with no spin stops the cue ball, all but what the balls do not give back', () => {
    // Just low enough that the backspin is gone as the balls meet.
    const heights = Array.from({ length: 41 }, (_, step) => -step / 100);
    const runs = heights.map((height) => {
      const { balls, events } = play(
        [
          { xM: 0, yM: -0.6 },
          { xM: 0, yM: 0 },
        ],
        { height },
      );
      const hit = events.find(({ kind }) => kind === 'hits-ball');
      const [cueBall] = balls;
      if (cueBall === undefined || hit === undefined) throw new RangeError('no hit');
      const before = cueBall.phases.filter(({ startS }) => startS < hit.timeS).at(-1);
      const arrives = before === undefined ? null : ballAt(cueBall, hit.timeS - 1e-9);
      // Half a second on, before the object ball can be back from the far cushion.
      const onM = Math.abs((ballAt(cueBall, hit.timeS + 0.5)?.yM ?? 9) - hit.yM);
      return { spin: Math.abs(arrives?.wx ?? 9), onM };
    });
    const stunned = runs.reduce((best, run) => (run.spin < best.spin ? run : best));
    expect(stunned.onM).toBeLessThan(0.02);
    expect(runs[0]?.onM).toBeGreaterThan(0.1);
  });

  it('a ball rolls off to the low side of a table that is not level', () => {
    const tilted = { ...DEFAULT_KIT, bedSlope: { alongM_per_M: 0, rightM_per_M: 0.002 } };
    const [ball] = play([{ xM: 0, yM: -1 }], { speedMps: 0.6 }, tilted).balls;
    expect(ball?.outcome.kind).toBe('rests');
    expect(ball?.outcome).toMatchObject({ xM: expect.toSatisfy((x: number) => x > 0.03) });
  });
});
