import type { Kit } from '../kit/kit';
import { KIT_QUANTITIES, type KitCorrelation, type KitSpread, kitMoved } from '../kit/kit-spread';
import type { Fit } from './fit-kit';
import { kitIndices } from './fit-layout';
import type { KitPrior } from './fit-question';

/** What is known of a kit after a fit, in the terms in which the room for error asks. */
export interface KitKnowledge {
  readonly kit: Kit;
  readonly spread: KitSpread;
  readonly correlation: KitCorrelation;
}

/** What a fit that had this kit among its own tells of it. */
export function kitKnowledge(fit: Fit, prior: KitPrior): KitKnowledge {
  const places = placesInOrder(fit, prior);
  let { kit } = prior;
  for (const { quantity, index } of places) {
    kit = kitMoved(kit, prior.spread, quantity, fit.unknowns[index] ?? 0);
  }
  const variance = (i: number, j: number) => fit.covariance[i]?.[j] ?? (i === j ? 1 : 0);
  const deviation = (index: number) => Math.sqrt(variance(index, index));
  const spread = Object.fromEntries(
    places.map(({ quantity, index }) => [quantity, prior.spread[quantity] * deviation(index)]),
  ) as unknown as KitSpread;
  const correlation = places.map(({ index: i }) =>
    places.map(({ index: j }) => variance(i, j) / (deviation(i) * deviation(j))),
  );
  return { kit, spread, correlation };
}

/** Where each quantity is in the fit, in the order of {@link KIT_QUANTITIES}. */
function placesInOrder(fit: Fit, { parts }: KitPrior) {
  const places = kitIndices(parts, fit.layout);
  return KIT_QUANTITIES.map((quantity) => ({
    quantity,
    index: places.find((place) => place.quantity === quantity)?.index ?? -1,
  }));
}
