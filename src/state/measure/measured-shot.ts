import { elevationAt } from '../../engine/fit/butt-elevation';
import type { FitShot, KitPrior, StrokeScatter } from '../../engine/fit/fit-question';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { StrokeProfile } from '../../engine/room/stroke-profile';
import type { Attempt } from '../../store/attempt';

/** How well a butt's height tells the elevation, rad, one standard deviation (our estimate). */
const BUTT_READ_RAD = (0.5 * Math.PI) / 180;

/** How a player's strokes stray, for the fit. */
export function scatterOf(profile: StrokeProfile): StrokeScatter {
  const { directionRad, tipM, elevationRad, speedShare } = profile;
  return { directionRad, tipM, elevationRad, speedShare };
}

/** An attempt as the fit takes it: the elevation is the one that was measured, where one was. */
export function measuredShot(attempt: Attempt, prior: KitPrior, scatter: StrokeScatter): FitShot {
  const { id, shot, readings, butt } = attempt;
  const read = butt && elevationOf(attempt, prior.kit);
  if (read === null) return { id, shot, readings, prior, scatter };
  return {
    id,
    shot: withElevation(shot, read),
    readings,
    prior,
    scatter: { ...scatter, elevationRad: Math.max(scatter.elevationRad, BUTT_READ_RAD) },
  };
}

/** What the height of an attempt's butt says of the elevation, rad; null where it says nothing. */
function elevationOf({ shot, butt }: Attempt, sizes: Parameters<typeof elevationAt>[2]) {
  if (butt === null) return null;
  const { side, height } = shot.stroke;
  return elevationAt(butt.buttHeightM, { side, height, cueLengthM: butt.cueLengthM }, sizes);
}

function withElevation(shot: TrialShot, elevationRad: number): TrialShot {
  return { ...shot, stroke: { ...shot.stroke, elevationRad: Math.max(0, elevationRad) } };
}
