import type { KnownFigure } from '../../engine/player/learn';
import { playerOf } from '../../engine/player/player-of';
import type { KnownPlayer } from '../../engine/player/player-report';

/**
 * Where a player's line lies shot after shot, rad: on straight shots right +, on cuts to either side
 * towards full +. Each in its middle, with the ends of its central nine tenths.
 */
export interface Leans {
  readonly straight: KnownFigure;
  readonly cutLeft: KnownFigure;
  readonly cutRight: KnownFigure;
}

/** On a cut to the right, further right is fuller; on one to the left, it is thinner. */
export function leansOf({ some }: KnownPlayer): Leans {
  const biases = some.map(playerOf);
  return {
    straight: figureOf(biases.map(({ aimBiasRad }) => aimBiasRad)),
    cutLeft: figureOf(biases.map(({ aimBiasRad, fullBiasRad }) => fullBiasRad - aimBiasRad)),
    cutRight: figureOf(biases.map(({ aimBiasRad, fullBiasRad }) => fullBiasRad + aimBiasRad)),
  };
}

function figureOf(values: readonly number[]): KnownFigure {
  const ordered = [...values].sort((one, other) => one - other);
  const at = (share: number) => ordered[Math.floor(share * ordered.length)] ?? 0;
  return { value: at(0.5), low: at(0.05), high: at(0.95) };
}
