import type { Theme } from '../engine/player/drill-shot';
import type { Limits } from '../engine/player/limits';
import { shareAlongTrack } from './window-bar';

/** From the most to the least room there is: of a line, rad, and of the logarithm of a speed. */
const LINE = { most: 3 * (Math.PI / 180), least: 0.1 * (Math.PI / 180) } as const;
const SPEED = { most: 0.5, least: 0.02 } as const;

/** How hard a shot is along its track, 0 to 1, by the logarithm of the room it leaves. */
export function layOutHardness(theme: Theme, room: number): number {
  const { most, least } = theme === 'speed' ? SPEED : LINE;
  const held = Math.min(most, Math.max(least, room));
  return shareAlongTrack(-Math.log(held), { min: -Math.log(most), max: -Math.log(least) });
}

/** How long each bar is beside the longest, 0 to 1; none is where nothing is gained. */
export function layOutLimits({ gains }: Limits): { readonly [L in keyof Limits['gains']]: number } {
  const most = Math.max(gains.line, gains.speed, gains.kit, Number.MIN_VALUE);
  const share = (gain: number) => Math.max(0, gain / most);
  return { line: share(gains.line), speed: share(gains.speed), kit: share(gains.kit) };
}
