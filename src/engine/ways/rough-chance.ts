import type { PlayedGoal } from '../goal/goal';
import { headingAt, mouthArrival } from '../goal/last-leg';
import { lastLeg } from '../goal/played-out';
import { type KitQuantity, kitMoved } from '../kit/kit-spread';
import { Run } from '../motion/run';
import { normalBelow } from '../numerics/normal';
import { inPlay } from '../room/drawn-stroke';
import type { Stroke } from '../stroke/stroke';
import type { WaysAsked } from './ways-question';

/** What of the kit sways most where cushions or other balls are on the way. */
const KIT: readonly KitQuantity[] = [
  'massRatio',
  'slideFriction',
  'cushionRestitution',
  'cushionFriction',
];

/** A look that loses the ball counts as so far beside, as a share of what is open. */
const LOST = 3;

/**
 * How often a stroke goes, by one look a standard deviation off in each of speed, side, height and what is
 * not known of the kit, and by how its miss hangs on the cue's direction: enough to choose what to work out.
 *
 * @param stroke its aim is measured over the table
 * @param missPerRad of the miss, as a share of what is open, per rad that the cue turns
 */
export function roughChance(
  asked: WaysAsked,
  goal: PlayedGoal,
  stroke: Stroke,
  missPerRad: number,
): number {
  const { laid, question } = asked;
  const { spread } = question;
  const { profile, kit } = inPlay(stroke, question.profile, question.kit, 0);
  const pocket = question.shape.pockets.find(({ name }) => name === goal.pocket);
  const run = new Run();
  const missOf = (moved: Stroke, played = kit): number => {
    const ball = lastLeg({ laid, goal }, moved, played, false);
    if (typeof ball === 'string' || pocket === undefined) return LOST;
    const heading = headingAt(ball, pocket, question.shape, played);
    return (heading && mouthArrival(ball, heading, played, run)?.miss) ?? LOST;
  };
  const tip = profile.tipM / (kit.ballRadiusM + kit.tipRadiusM);
  const strays = [
    missOf({ ...stroke, speedMps: stroke.speedMps * (1 + profile.speedShare) }),
    missOf({ ...stroke, side: stroke.side + tip }),
    missOf({ ...stroke, height: stroke.height + tip }),
    ...KIT.filter((quantity) => spread[quantity] > 0).map((quantity) =>
      missOf(stroke, kitMoved(kit, spread, quantity, 1)),
    ),
  ];
  const sd = Math.hypot(missPerRad * profile.directionRad, ...strays);
  return 2 * normalBelow(1 / sd) - 1;
}
