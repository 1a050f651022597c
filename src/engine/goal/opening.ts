/**
 * What of a mouth is open to a ball that crosses it at some speed: its centre goes within `halfM` of
 * a place `midM` right of the target line. A soft ball falls off the jaws that throw out a hard one.
 */
export interface Opening {
  readonly speedMps: number;
  readonly midM: number;
  readonly halfM: number;
}

/**
 * Between two openings in proportion to the speed; beyond the first and the last, as they are.
 *
 * @param openings at least one, by rising speed
 */
export function openingAt(openings: readonly Opening[], speedMps: number): Opening {
  const [first] = openings;
  if (first === undefined) throw new RangeError('0 openings; there must be at least 1');
  let slower = first;
  for (const faster of openings) {
    if (faster.speedMps >= speedMps) return between(slower, faster, speedMps);
    slower = faster;
  }
  return slower;
}

function between(slower: Opening, faster: Opening, speedMps: number): Opening {
  const span = faster.speedMps - slower.speedMps;
  const share = span > 0 ? (speedMps - slower.speedMps) / span : 1;
  return {
    speedMps,
    midM: slower.midM + share * (faster.midM - slower.midM),
    halfM: slower.halfM + share * (faster.halfM - slower.halfM),
  };
}
