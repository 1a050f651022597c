import type { LaidTable } from '../goal/laid-table';
import { bearing, wrapped } from '../numerics/angle';
import type { TablePlay } from '../table/table-play';

/** To which side of what was meant the first ball was hit. */
export type HitSide = 'thin' | 'full';

/** How the first ball is hit when all is as meant. */
export interface MeantHit {
  /** Which way the cue turns for a fuller hit: 1 right, −1 left; 0: it is full. */
  readonly fullerSide: 1 | -1 | 0;
  /** Of another play of the same stroke; null where the hit is meant full, or there is no play. */
  sideOf(play: TablePlay | null): HitSide | null;
}

/** A straighter hit than this has neither a thin nor a full side, rad. */
const STRAIGHT_RAD = 0.02;

/**
 * Tells thin hits from full ones by how far the first ball lies off the cue ball's way when the two meet. A
 * ball that is not met at all, or another first, is missed thin.
 *
 * @param meant the play of the stroke as it is meant, with its phases; null: it cannot be played
 */
export function meantHit({ balls }: LaidTable, meant: TablePlay | null): MeantHit {
  const hit = meant && firstContact(meant, balls);
  const arriving = meant?.balls[0]?.phases
    .filter(({ startS }) => startS < (hit?.timeS ?? 0))
    .at(-1);
  if (meant === null || hit === null || arriving === undefined) return NO_HIT;
  const { xM, yM } = arriving.start;
  const wayRad = bearing(hit.xM - xM, hit.yM - yM);
  const offRad = wrapped(hit.towardsRad - wayRad);
  if (Math.abs(offRad) < STRAIGHT_RAD) return NO_HIT;
  const cushions = meant.events.filter(
    ({ kind, ball, timeS }) => kind === 'hits-cushion' && ball === 0 && timeS < hit.timeS,
  ).length;
  return {
    // Each cushion turns the sides round.
    fullerSide: offRad > 0 === (cushions % 2 === 0) ? 1 : -1,
    sideOf(play) {
      if (play === null) return null;
      const other = firstContact(play, balls);
      if (other === null || other.ball !== hit.ball) return 'thin';
      const off = wrapped(other.towardsRad - wayRad);
      return off * Math.sign(offRad) < Math.abs(offRad) ? 'full' : 'thin';
    },
  };
}

const NO_HIT: MeantHit = { fullerSide: 0, sideOf: () => null };

/** Which ball is met first, when (s), and in which direction it lies from the cue ball, rad. */
function firstContact({ events }: TablePlay, balls: LaidTable['balls']) {
  const hit = events.find((event) => event.kind === 'hits-ball' && event.ball === 0);
  if (hit?.kind !== 'hits-ball') return null;
  const struck = balls[hit.other];
  if (struck === undefined) return null;
  const towardsRad = bearing(struck.xM - hit.xM, struck.yM - hit.yM);
  const { timeS, xM, yM } = hit;
  return { ball: hit.other, timeS, xM, yM, towardsRad };
}
