import { describe, expect, it } from 'vitest';
import { laidTable, playLaid } from '../../src/engine/goal/laid-table';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import type { NamedBall } from '../../src/engine/lie/position';
import type { Stroke } from '../../src/engine/stroke/stroke';
import type { TablePlay } from '../../src/engine/table/table-play';
import { NINE_FOOT } from '../harness/invented-positions';

const DEG = Math.PI / 180;
const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });

function play(
  balls: readonly NamedBall[],
  stroke: Partial<Stroke>,
  kit: Kit = DEFAULT_KIT,
): TablePlay {
  const level = { aimRad: 0, side: 0, height: 0, elevationRad: 0, speedMps: 2, ...stroke };
  const played = playLaid(laidTable(balls, NINE_FOOT), level, kit);
  if (played === null) throw new RangeError('the engine does not take this');
  return played;
}

/** Where the cushion that a ball meets sends it across to the other side, m up the table. */
function crossesAt({ events }: TablePlay, ball: number): number {
  const met = events.filter((event) => event.kind === 'hits-cushion' && event.ball === ball);
  const [, across] = met;
  if (across === undefined) throw new RangeError('it comes to one cushion only');
  return across.yM;
}

// All of these: common practice, no source.
describe('what players know of banks, kicks and caroms', () => {
  // Into the right cushion, 60° from up the table: there left side runs, and right side checks. The cue
  // has no end mass, so that no squirt is mixed in.
  const unsquirted = { ...DEFAULT_KIT, massRatio: Number.POSITIVE_INFINITY };
  const kick = (side: number) =>
    crossesAt(play([at('cue', 0, -1)], { aimRad: 60 * DEG, side }, unsquirted), 0);

  it('running side lengthens a kick, and check side shortens it', () => {
    expect(kick(-0.3)).toBeGreaterThan(kick(0) + 0.05);
    expect(kick(0.3)).toBeLessThan(kick(0) - 0.05);
  });

  // The ball is sent straight on, into the right cushion at 50°.
  const bank = (speedMps: number) => {
    const [sin, cos] = [Math.sin(50 * DEG), Math.cos(50 * DEG)];
    const balls = [at('cue', -0.1 - 0.3 * sin, -0.9 - 0.3 * cos), at(1, -0.1, -0.9)];
    return crossesAt(play(balls, { aimRad: 50 * DEG, speedMps }), 1);
  };

  it('a firm bank comes off shorter than a soft one', () => {
    expect(bank(4.5)).toBeLessThan(bank(2) - 0.03);
  });

  // Of a ball struck so that the two centres pass each other by a share of two radii.
  const leaves = (share: number) => {
    const asideM = 2 * DEFAULT_KIT.ballRadiusM * share;
    const { balls, events } = play([at('cue', 0, -0.5), at(1, asideM, 0)], { height: 0.2 });
    const hit = events.find(({ kind }) => kind === 'hits-ball');
    const phases = balls[0]?.phases ?? [];
    const before = phases.filter(({ startS }) => startS < (hit?.timeS ?? 0)).at(-1);
    const after = phases.find(({ startS }) => startS >= (hit?.timeS ?? 0));
    const speed = (phase: typeof before) => Math.hypot(phase?.start.vx ?? 0, phase?.start.vy ?? 0);
    return speed(after) / speed(before);
  };

  it('a carom off a thin hit keeps the cue ball’s speed, off a full one it loses most of it', () => {
    expect(leaves(0.97)).toBeGreaterThan(0.85);
    expect(leaves(0.5)).toBeLessThan(0.6);
    expect(leaves(0.1)).toBeLessThan(0.2);
  });
});
