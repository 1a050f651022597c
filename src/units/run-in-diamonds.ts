/** Diamonds from cushion to cushion. */
const LENGTH = 8;

/** A run up a table from a diamond's line, and back and forth. */
export interface RunTable {
  /** Nose to nose, m. */
  readonly bedLengthM: number;
  readonly ballRadiusM: number;
  /** From where the ball's centre lies to where it turns at the far cushion, m. */
  readonly firstLegM: number;
}

/**
 * How far a ball ran, m, from the diamonds it passed, counted from where it lay. At each cushion its
 * centre turns a radius before the nose, which the count does not see.
 */
export function runInM(diamonds: number, table: RunTable): number {
  const { bedLengthM, ballRadiusM } = table;
  const first = firstLegDiamonds(table);
  const turns = diamonds <= first ? 0 : Math.floor((diamonds - first) / LENGTH) + 1;
  return Math.max(0, (diamonds * bedLengthM) / LENGTH - turns * 2 * ballRadiusM);
}

/** The diamonds that are counted of a run of so many m: undoes {@link runInM}. */
export function runInDiamonds(runM: number, { bedLengthM, ballRadiusM, firstLegM }: RunTable) {
  const acrossM = bedLengthM - 2 * ballRadiusM;
  const turns = runM <= firstLegM ? 0 : Math.floor((runM - firstLegM) / acrossM) + 1;
  return ((runM + turns * 2 * ballRadiusM) * LENGTH) / bedLengthM;
}

/** From where the ball lies up to the far nose. */
function firstLegDiamonds({ bedLengthM, ballRadiusM, firstLegM }: RunTable): number {
  return ((firstLegM + ballRadiusM) * LENGTH) / bedLengthM;
}
