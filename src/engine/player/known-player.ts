import { normalBelow } from '../numerics/normal';
import type { Player } from './player-of';
import type { STOPS } from './results';
import { lineScatter, onCue, type PlainLine, type Result, type TipLine } from './shot-line';
import { bentBy } from './squirt-bends';

/** Where a player's line lies on a shot in the mean, from its solved aim, rad, right +. */
function lineBias(player: Player, line: PlainLine): number {
  const { aimBiasRad, fullBiasRad, speedBias, squirtSds } = player;
  return (
    aimBiasRad +
    line.fullSide * fullBiasRad +
    line.perSpeedShare * speedBias +
    bentBy(line.squirt.aimRad, squirtSds)
  );
}

/**
 * How much of what is not known of the kit counts as chance. The rest is the same shot after shot, and
 * looks like a steady error (our judgement).
 */
export const KIT_SHARE = 0.4;

/** What can become of a shot. */
export function possibleResults({ passes }: PlainLine): readonly Result[] {
  return ['went', ...passes, 'short', 'untouched'];
}

/**
 * How likely one result of a shot is for a player; 0 of one that it cannot have.
 *
 * @param aimOffRad where it was aimed, from the solved aim, right +
 */
export function likelihoodOf(
  player: Player,
  line: PlainLine,
  result: Result,
  aimOffRad = 0,
): number {
  const { leastSpeed, edges, passes } = line;
  const { speedShare } = player.stroke;
  const short = leastSpeed === null ? 0 : normalBelow((leastSpeed - player.speedBias) / speedShare);
  if (result === 'short') return short;
  const sd = chanceScatter(player, line);
  const middle = aimOffRad + lineBias(player, line);
  const below = (edge: number) => normalBelow((edge - middle) / sd);
  const [untouchedLow, low, high, untouchedHigh] = edges;
  const gets = 1 - short;
  if (result === 'went') return gets * (below(high) - below(low));
  if (result === 'untouched') return gets * (below(untouchedLow) + 1 - below(untouchedHigh));
  // Both sides have one name where a shot is edged by the same thing on either.
  const lower = result === passes[0] ? below(low) - below(untouchedLow) : 0;
  const higher = result === passes[1] ? below(untouchedHigh) - below(high) : 0;
  return gets * (lower + higher);
}

export type Stopped = (typeof STOPS)[number];

/** Between which speeds the cue ball rests where it is to, as logarithms of them over the meant one. */
export interface SpeedWindow {
  readonly low: number;
  readonly high: number;
}

/** How likely the cue ball of a ball that goes stops there, short of it or beyond: by the speed alone. */
export function likelihoodOfStop(
  {
    speedBias,
    stroke,
  }: Pick<Player, 'speedBias'> & { readonly stroke: Pick<Player['stroke'], 'speedShare'> },
  { low, high }: SpeedWindow,
  stopped: Stopped,
): number {
  const below = (edge: number) => normalBelow((edge - speedBias) / stroke.speedShare);
  if (stopped === 'short') return below(low);
  return stopped === 'long' ? 1 - below(high) : below(high) - below(low);
}

/** What of a line changes from stroke to stroke, one standard deviation, rad. */
function chanceScatter({ stroke, squirtSds }: Player, line: PlainLine): number {
  const other =
    (line.perHeightM * stroke.tipM) ** 2 +
    (line.perSpeedShare * stroke.speedShare) ** 2 +
    (line.perElevation * stroke.elevationRad) ** 2 +
    (KIT_SHARE * line.kitSdRad) ** 2;
  return Math.sqrt(ownScatter({ stroke, squirtSds }, line) ** 2 + other);
}

/** How a player's line scatters with their own cue, one standard deviation, rad: direction and tip alone. */
export function ownScatter(
  { stroke, squirtSds }: Pick<Player, 'stroke' | 'squirtSds'>,
  line: TipLine,
): number {
  return lineScatter(stroke, onCue(line, squirtSds));
}
