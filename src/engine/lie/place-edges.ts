import type { PlacedBall } from '../table/table-play';

/** A line or circle along which a ball touches something, seen from above, m. */
export type Edge = Round | Straight;

export interface Round {
  readonly kind: 'round';
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

/** All places a distance along a unit vector from the table's middle. */
export interface Straight {
  readonly kind: 'straight';
  readonly nx: number;
  readonly ny: number;
  readonly offM: number;
}

/** The place on an edge that is nearest to another. */
export function nearestOn(edge: Edge, { xM, yM }: PlacedBall): PlacedBall {
  if (edge.kind === 'straight') {
    const byM = edge.offM - xM * edge.nx - yM * edge.ny;
    return { xM: xM + byM * edge.nx, yM: yM + byM * edge.ny };
  }
  const [dx, dy] = [xM - edge.xM, yM - edge.yM];
  const apartM = Math.hypot(dx, dy);
  // From its very middle any way out is as short.
  if (apartM === 0) return { xM: edge.xM, yM: edge.yM + edge.radiusM };
  const share = edge.radiusM / apartM;
  return { xM: edge.xM + dx * share, yM: edge.yM + dy * share };
}

/** Where two edges cross or touch: none, one or two places. */
export function meetingsOf(a: Edge, b: Edge): readonly PlacedBall[] {
  if (a.kind === 'round') return b.kind === 'round' ? roundsMeet(a, b) : roundMeets(a, b);
  return b.kind === 'round' ? roundMeets(b, a) : straightsMeet(a, b);
}

function straightsMeet(a: Straight, b: Straight): readonly PlacedBall[] {
  const turn = a.nx * b.ny - a.ny * b.nx;
  if (Math.abs(turn) < 1e-9) return [];
  const xM = (a.offM * b.ny - b.offM * a.ny) / turn;
  const yM = (b.offM * a.nx - a.offM * b.nx) / turn;
  return [{ xM, yM }];
}

function roundMeets(round: Round, line: Straight): readonly PlacedBall[] {
  const foot = nearestOn(line, round);
  const square = round.radiusM ** 2 - (foot.xM - round.xM) ** 2 - (foot.yM - round.yM) ** 2;
  if (!(square >= 0)) return [];
  return bothWays(foot, line, Math.sqrt(square));
}

function roundsMeet(a: Round, b: Round): readonly PlacedBall[] {
  const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
  const apartM = Math.hypot(dx, dy);
  const alongM = (apartM ** 2 + a.radiusM ** 2 - b.radiusM ** 2) / (2 * apartM);
  const square = a.radiusM ** 2 - alongM ** 2;
  // Where both have one middle, alongM is not a number.
  if (!(square >= 0)) return [];
  const [nx, ny] = [dx / apartM, dy / apartM];
  const foot = { xM: a.xM + nx * alongM, yM: a.yM + ny * alongM };
  return bothWays(foot, { nx, ny }, Math.sqrt(square));
}

/** The two places so far from a foot, square to a unit vector. */
function bothWays(
  { xM, yM }: PlacedBall,
  { nx, ny }: Pick<Straight, 'nx' | 'ny'>,
  byM: number,
): readonly PlacedBall[] {
  return [
    { xM: xM - byM * ny, yM: yM + byM * nx },
    { xM: xM + byM * ny, yM: yM - byM * nx },
  ];
}
