/**
 * How a game stands between two equal players, as the share of games won by who is at the table. Who pots
 * the best shot goes on with one ball less, who misses leaves the other at the table; either shot that
 * follows is a usual one. Nobody plays a shot that is worse than a safety. A safety leaves no shot as good
 * as a safety is, so of equals it wins every other game.
 *
 * With F(0) = 1, of a usual shot q, F(n) = q F(n − 1) + (1 − q)(1 − F(n)); of a best shot of ease p it is
 * p F(n − 1) + (1 − p)(1 − F(n)), and ½ at least. Source: this recursion, our own.
 */
export class Standing {
  private readonly usual: number;

  /** @param usual how likely a usual shot goes, 0 to 1 */
  constructor(usual: number) {
    this.usual = usual;
  }

  /**
   * @param ease how likely the best shot goes, 0 to 1; 0: there is none
   * @param balls how many must fall to win, 1 or more
   */
  share(ease: number, balls: number): number {
    const byPot = ease * this.usually(balls - 1) + (1 - ease) * (1 - this.usually(balls));
    return Math.max(BY_SAFETY, byPot);
  }

  /** F, of so many balls. */
  private usually(balls: number): number {
    const { usual } = this;
    let share = 1;
    for (let n = 1; n <= balls; n++) share = (usual * share + 1 - usual) / (2 - usual);
    return share;
  }
}

const BY_SAFETY = 1 / 2;
