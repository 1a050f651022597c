import { PARTS, type Part } from '../kit/kit-numbers';
import { type KitQuantity, QUANTITIES_OF } from '../kit/kit-spread';
import { type FitQuantity, type FitShot, type Parts, PLAYER_SPREAD } from './fit-question';

/**
 * One unknown of the fit. It is counted in prior standard deviations from its prior middle, so that
 * all unknowns are of one size and every prior is the standard normal law.
 */
export interface Unknown {
  /** The name of the cue, cloth, balls or table it belongs to; the player's are of `player`. */
  readonly owner: string;
  readonly part: Part | 'player';
  readonly quantity: FitQuantity;
}

/** The unknowns of a fit in order, and where to find each. */
export interface FitLayout {
  readonly unknowns: readonly Unknown[];
  indexOf(part: Unknown['part'], owner: string, quantity: FitQuantity): number;
}

const PLAYER_QUANTITIES = Object.keys(PLAYER_SPREAD) as (keyof typeof PLAYER_SPREAD)[];
const PLAYER = 'player';

/** Lays out every quantity of every part that a shot was played with, and the player's own. */
export function layOut(shots: readonly FitShot[], more: readonly Parts[] = []): FitLayout {
  const unknowns: Unknown[] = [];
  const places = new Map<string, number>();
  const add = (unknown: Unknown) => {
    const key = keyOf(unknown.part, unknown.owner, unknown.quantity);
    if (places.has(key)) return;
    places.set(key, unknowns.length);
    unknowns.push(unknown);
  };
  for (const parts of [...shots.map((shot) => shot.prior.parts), ...more]) {
    for (const part of PARTS) {
      for (const quantity of QUANTITIES_OF[part]) add({ owner: parts[part], part, quantity });
    }
  }
  for (const quantity of PLAYER_QUANTITIES) add({ owner: PLAYER, part: PLAYER, quantity });
  return {
    unknowns,
    indexOf: (part, owner, quantity) => places.get(keyOf(part, owner, quantity)) ?? -1,
  };
}

function keyOf(part: Unknown['part'], owner: string, quantity: FitQuantity): string {
  return `${part}/${quantity}/${owner}`;
}

/** Which unknowns a shot may hang on. */
export interface ShotUnknowns {
  readonly kit: readonly { readonly quantity: KitQuantity; readonly index: number }[];
  readonly aimBias: number;
  /** −1 where the speed was given as a figure. */
  readonly speed: number;
}

/** Where the unknowns of a shot are in the layout. */
export function unknownsOf({ shot, prior }: FitShot, layout: FitLayout): ShotUnknowns {
  const { speedWord } = shot.stroke;
  return {
    kit: kitIndices(prior.parts, layout),
    aimBias: layout.indexOf(PLAYER, PLAYER, 'aimBias'),
    speed: speedWord === null ? -1 : layout.indexOf(PLAYER, PLAYER, speedWord),
  };
}

/** Where the quantities of a kit are in the layout. */
export function kitIndices(parts: Parts, layout: FitLayout): ShotUnknowns['kit'] {
  return PARTS.flatMap((part) =>
    QUANTITIES_OF[part].map((quantity) => ({
      quantity,
      index: layout.indexOf(part, parts[part], quantity),
    })),
  );
}
