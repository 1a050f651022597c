import type { Arrival } from '../goal/task';

/** What one standard deviation of a stray does to how the object ball comes to its target. */
export interface ArrivalSlope {
  readonly miss: number;
  /** Of what the ball has left: {@link leftOf}. */
  readonly left: number;
}

/** A step for slopes, in standard deviations: wide enough to see past a kink. */
const STEP = 0.25;
/** The miss's deviation where a step either way loses the ball: as good as hopeless. */
const HOPELESS = 100;

/** The speed squared: it falls evenly along a ball's run, and is spent where the ball stops. */
export function leftOf({ speedMps }: Arrival): number {
  return speedMps * speedMps;
}

/** By a step either way, or one way alone where the other loses the ball. */
export function arrivalSlope(
  whenTrue: Arrival,
  arrivalAt: (sds: number) => Arrival | string,
): ArrivalSlope {
  const [less, more] = [arrivalAt(-STEP), arrivalAt(STEP)];
  if (typeof less === 'string') {
    return typeof more === 'string' ? { miss: HOPELESS, left: 0 } : between(whenTrue, more, STEP);
  }
  return typeof more === 'string' ? between(less, whenTrue, STEP) : between(less, more, 2 * STEP);
}

function between(less: Arrival, more: Arrival, sds: number): ArrivalSlope {
  const left = leftOf(more) - leftOf(less);
  // Where there is no mouth to reach, both have an infinite amount left.
  return { miss: (more.miss - less.miss) / sds, left: Number.isNaN(left) ? 0 : left / sds };
}

/** The miss's standard deviation, of all strays together. */
export function missSd(slopes: readonly ArrivalSlope[]): number {
  let square = 0;
  for (const { miss } of slopes) square += miss * miss;
  return Math.sqrt(square);
}

/**
 * The standard deviation of what the ball has left among strokes that do not miss: what a stray
 * takes of it only by missing as well must not count twice.
 */
export function leftSdOnTarget(slopes: readonly ArrivalSlope[]): number {
  let [left, both, miss] = [0, 0, 0];
  for (const slope of slopes) {
    left += slope.left * slope.left;
    both += slope.left * slope.miss;
    miss += slope.miss * slope.miss;
  }
  return Math.sqrt(Math.max(0, miss > 0 ? left - (both * both) / miss : left));
}
