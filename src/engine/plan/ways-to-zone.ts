import { didScratch, playOn, type RestZone, type Scene } from '../goal/scene';
import { atUsualPace } from '../room/drawn-stroke';
import type { StrokeProfile } from '../room/stroke-profile';
import type { Point } from '../table/point';
import { byChance, kindOf, type NamedOption } from './distinct-ways';
import { cueBallEnd, outsideBy } from './rest-spread';
import type { Option, OptionQuestion } from './solve-option';
import { wayOf } from './way';

/** Options less likely than this share of the best of their kind are not looked at. */
const WORTH = 0.4;
/** How many strokes to play out. */
const MOST_PLAYS = 600;
/** So far outside the zone, m, a rest is worth little: about what a player's pace strays. */
const NEAR_M = 0.15;

/**
 * Of every kind of way the option that does best at going and at leaving the cue ball in the zone,
 * judged by the stroke played as meant, but at the player's usual pace.
 *
 * @param options none that cannot be played where the balls lie
 */
export function waysToZone(
  question: OptionQuestion,
  options: readonly Option[],
  leastElevationRad: number,
  scene: Scene,
  zone: RestZone,
): readonly NamedOption[] {
  const kinds = new Map<string, { readonly named: NamedOption; readonly worth: number }>();
  for (const named of variants(question, options, leastElevationRad)) {
    const worth = worthOf(named.option, question.profile, scene, zone);
    const former = kinds.get(kindOf(named.way));
    if (former === undefined || worth > former.worth)
      kinds.set(kindOf(named.way), { named, worth });
  }
  return [...kinds.values()].sort((a, b) => b.worth - a.worth).map(({ named }) => named);
}

/** The likeliest of each kind, speed and height, the likeliest first. */
function variants(
  question: OptionQuestion,
  options: readonly Option[],
  leastElevationRad: number,
): readonly NamedOption[] {
  const seen = new Set<string>();
  const best = new Map<string, number>();
  const found: NamedOption[] = [];
  for (const option of [...options].sort(byChance)) {
    if (found.length >= MOST_PLAYS) break;
    const way = wayOf(question, option.stroke, leastElevationRad);
    const kind = kindOf(way);
    const variant = `${kind} ${option.stroke.speedMps} ${option.stroke.height}`;
    if (seen.has(variant) || option.chance.share < WORTH * (best.get(kind) ?? 0)) continue;
    seen.add(variant);
    if (!best.has(kind)) best.set(kind, option.chance.share);
    found.push({ option, way });
  }
  return found;
}

function worthOf(option: Option, profile: StrokeProfile, scene: Scene, zone: RestZone): number {
  const play = playOn(scene, atUsualPace(option.stroke, profile), { endsOnly: true });
  if (play === null || didScratch(play)) return 0;
  return option.chance.share * nearness(zone, cueBallEnd(play, scene));
}

/** How well a place does for a zone: 1 within it, and less the farther outside. */
export function nearness(zone: RestZone, place: Point): number {
  const off = outsideBy(zone, place) / NEAR_M;
  return Math.exp((-off * off) / 2);
}
