import { playAim } from '../../src/engine/direct/play-aim';
import type { Query } from './random-shots';

const RAD = Math.PI / 180;
/** The object ball leaves this near the target line, rad, or the aim does not go: 0.001°. */
const GOES = 0.001 * RAD;

/**
 * Looks for an aim by brute force: plays every aim on a grid and halves wherever the object ball
 * changes sides of the target line.
 *
 * @returns an aim that goes, rad, or null
 */
export function scanForAim(query: Query, spanDeg: number, stepDeg: number): number | null {
  const steps = Math.round((2 * spanDeg) / stepDeg);
  let before = { aim: Number.NaN, miss: Number.NaN };
  for (let step = 0; step <= steps; step++) {
    const aim = (-spanDeg + step * stepDeg) * RAD;
    const now = { aim, miss: missAt(query, aim) };
    if (Math.abs(now.miss) <= GOES) return aim;
    if (now.miss > 0 !== before.miss > 0 && Math.abs(now.miss - before.miss) < Math.PI / 2) {
      const found = halve(query, before, now);
      if (found !== null) return found;
    }
    before = now;
  }
  return null;
}

interface Look {
  readonly aim: number;
  readonly miss: number;
}

function halve(query: Query, left: Look, right: Look): number | null {
  let [low, high] = [left, right];
  for (let halving = 0; halving < 60; halving++) {
    const aim = (low.aim + high.aim) / 2;
    const middle = { aim, miss: missAt(query, aim) };
    if (Math.abs(middle.miss) <= GOES) return aim;
    if (middle.miss > 0 === low.miss > 0) low = middle;
    else high = middle;
  }
  return null;
}

/** How far right of the target line the object ball leaves, rad; NaN where it is not touched. */
function missAt({ shot, kit }: Query, aimRad: number): number {
  const played = playAim(shot, kit, aimRad);
  const direction = played.ok ? played.objectBall.directionRad : null;
  return direction === null ? Number.NaN : direction - shot.cutRad;
}
