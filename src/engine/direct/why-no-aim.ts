import type { Kit } from '../kit/kit';
import { endState, newPlace, type Phase, placeAt } from '../motion/phase';
import { length } from '../numerics/length';
import { freePath } from './candidate-aims';
import { ContactProber, FLANKS } from './contact-probe';
import { changesSign } from './contact-roots';
import type { Layout } from './layout';
import type { RefusalReason, Shot } from './shot';

type NoAimReason = Extract<
  RefusalReason,
  'stops-short' | 'curves-away' | 'too-thin' | 'flies-over' | 'no-convergence'
>;

/** A path that ends this much nearer its start than it once was has turned back, m. */
const TURNED_BACK_M = 0.001;
/** Looks per phase: only the reason hangs on them, never whether there is an aim. */
const LOOKS = 64;

/**
 * Why no aim sends the object ball along the target line. That none does is known; this only finds
 * the words, from the free path at aim 0.
 *
 * @param candidates aims that looked right until they were played out
 */
export function whyNoAim(
  shot: Shot,
  layout: Layout,
  kit: Kit,
  candidates: readonly number[],
): NoAimReason {
  const path = freePath(shot, kit);
  const away = farthest(path);
  const last = path.at(-1);
  const end = last === undefined ? null : endState(last);
  const endAway = end === null ? 0 : length(end.xM, end.yM);
  const turnedBack = endAway < away - TURNED_BACK_M;
  if (away < shot.distanceM) return turnedBack ? 'curves-away' : 'stops-short';
  if (!turnedBack && endAway < layout.separationM + layout.reachM) return 'stops-short';
  if (heightWhenAway(path, shot.distanceM) > layout.reachM / 4) return 'flies-over';
  const unsettled =
    candidates.length > 0 || jumpsAtLanding(path, new ContactProber(layout, shot.cutRad, kit));
  if (unsettled) return 'no-convergence';
  return Math.abs(shot.cutRad) < STRAIGHT_LIMIT ? 'curves-away' : 'too-thin';
}

/** A straight path makes any cut below this, rad: 90° less the most that friction throws. */
const STRAIGHT_LIMIT = (75 * Math.PI) / 180;

/**
 * Whether the object ball's direction leaps past the target line as the cue ball lands: touched just
 * before, it goes to one side, just after, to the other.
 */
function jumpsAtLanding(path: readonly Phase[], prober: ContactProber): boolean {
  return path.some((after, index) => {
    const before = path[index - 1];
    if (before?.motion !== 'flying') return false;
    return FLANKS.some((flank) => {
      prober.look(before, before.durationS, flank);
      if (prober.gapM() > 0) return false;
      const falling = prober.objectMiss();
      prober.look(after, 0, flank);
      return changesSign(falling, prober.objectMiss());
    });
  });
}

function farthest(path: readonly Phase[]): number {
  let most = 0;
  overPath(path, (away) => {
    most = Math.max(most, away);
  });
  return most;
}

/** How high the ball is when it is first this far from its start, m. */
function heightWhenAway(path: readonly Phase[], distanceM: number): number {
  let height = Number.NaN;
  overPath(path, (away, zM) => {
    if (away >= distanceM && Number.isNaN(height)) height = zM;
  });
  return height;
}

function overPath(path: readonly Phase[], see: (awayM: number, zM: number) => void): void {
  const place = newPlace();
  for (const phase of path) {
    for (let look = 0; look <= LOOKS; look++) {
      placeAt(phase, (phase.durationS * look) / LOOKS, place);
      see(length(place.xM, place.yM), place.zM);
    }
  }
}
