import { type KitQuantity, kitMoved, quantityIn } from '../kit/kit-spread';
import type { Fit } from './fit-kit';
import type { Unknown } from './fit-layout';
import { type KitPrior, PLAYER_SPREAD, type PlayerQuantity } from './fit-question';

/** What a fit tells of one quantity, and of whose. */
export interface Estimate extends Unknown {
  /**
   * In SI units. Of ball friction it is the coefficient at a slip of 1 m/s; of a speed word, how
   * much harder it is played than it is taken to mean, as a factor.
   */
  readonly value: number;
  /** One standard deviation: of the logarithm, but absolute of slopes (m/m) and aim bias (rad). */
  readonly sd: number;
  /** The same, before anything was read. */
  readonly sdBefore: number;
}

/** @param priors those of the fit's shots and of any other kit it was asked for */
export function estimatesOf(fit: Fit, priors: readonly KitPrior[]): readonly Estimate[] {
  return fit.layout.unknowns.map((unknown, index) => {
    const sds = fit.unknowns[index] ?? 0;
    const share = Math.sqrt(fit.covariance[index]?.[index] ?? 1);
    const { value, sdBefore } =
      unknown.part === 'player'
        ? ofPlayer(unknown.quantity as PlayerQuantity, sds)
        : ofKit(unknown, sds, priors);
    return { ...unknown, value, sd: sdBefore * share, sdBefore };
  });
}

function ofPlayer(quantity: PlayerQuantity, sds: number) {
  const sdBefore = PLAYER_SPREAD[quantity];
  return { value: quantity === 'aimBias' ? sdBefore * sds : Math.exp(sdBefore * sds), sdBefore };
}

function ofKit({ part, owner, quantity }: Unknown, sds: number, priors: readonly KitPrior[]) {
  const prior = part === 'player' ? undefined : priors.find(({ parts }) => parts[part] === owner);
  if (prior === undefined) throw new RangeError(`no prior was given of ${part} ${owner}`);
  const asked = quantity as KitQuantity;
  const kit = kitMoved(prior.kit, prior.spread, asked, sds);
  return { value: quantityIn(kit, asked), sdBefore: prior.spread[asked] };
}
