import RAPIER from '@dimforge/rapier3d-compat';
import type { Kit } from '../../../src/engine/kit/kit';
import { type Body, GRAVITY } from '../reference/body';

/** Loads the engine: once, before anything is played. */
export const readyRigidBodies = (): Promise<void> => RAPIER.init();

/** How balls are played as rigid bodies. */
export interface RigidPlay {
  /** The first is the cue ball. */
  readonly balls: readonly Body[];
  /** Of the friction between balls its constant part counts alone. */
  readonly kit: Kit;
  /** Without one there is no gravity either. */
  readonly hasBed: boolean;
  readonly untilS: number;
}

/** A contact foreseen from afar would be old by the time it presses, askew and without rebound. */
const AHEAD_M = 0;
/** Natural frequency of a contact, per step: so stiff that it gives way by nothing that matters. */
const STIFFNESS = 5;
const BALL_KG = 0.17;

/**
 * Balls on a bed as an engine of general purpose plays rigid bodies: spheres on the face of a block,
 * under gravity, with Coulomb friction and Newton's restitution, in equal steps.
 *
 * Nothing resists rolling there, and nothing stops side.
 */
export function playRigid({ balls, kit, hasBed, untilS }: RigidPlay, stepS: number): Body[] {
  const world = new RAPIER.World({ x: 0, y: 0, z: hasBed ? -GRAVITY : 0 });
  world.timestep = stepS;
  world.integrationParameters.normalizedPredictionDistance = AHEAD_M;
  world.integrationParameters.contact_natural_frequency = STIFFNESS / stepS;
  if (hasBed) world.createCollider(bedOf(kit));
  const bodies = balls.map(({ at, velocity, spin: [x, y, z] }, number) => {
    const body = RAPIER.RigidBodyDesc.dynamic()
      .setTranslation(...at)
      .setLinvel(...velocity)
      .setAngvel({ x, y, z })
      .setCanSleep(false);
    const rigid = world.createRigidBody(body);
    world.createCollider(sphereOf(kit, number === 0 ? kit.cueBallMassRatio : 1), rigid);
    return rigid;
  });
  const steps = Math.round(untilS / stepS);
  for (let step = 0; step < steps; step++) world.step();
  const after = bodies.map((body): Body => {
    const [at, velocity, spin] = [body.translation(), body.linvel(), body.angvel()];
    return {
      at: [at.x, at.y, at.z],
      velocity: [velocity.x, velocity.y, velocity.z],
      spin: [spin.x, spin.y, spin.z],
    };
  });
  world.free();
  return after;
}

// Of the rules of two that touch the greater counts, and Max > Min > Average. So the bed has its
// friction with a ball, and a ball its own with a ball; restitution likewise.
function bedOf(kit: Kit): RAPIER.ColliderDesc {
  return RAPIER.ColliderDesc.cuboid(20, 20, 1)
    .setTranslation(0, 0, -1 - kit.ballRadiusM)
    .setFriction(kit.slideFriction)
    .setFrictionCombineRule(RAPIER.CoefficientCombineRule.Max)
    .setRestitution(kit.bedRestitution)
    .setRestitutionCombineRule(RAPIER.CoefficientCombineRule.Min);
}

function sphereOf(kit: Kit, massRatio: number): RAPIER.ColliderDesc {
  return RAPIER.ColliderDesc.ball(kit.ballRadiusM)
    .setMass(BALL_KG * massRatio)
    .setFriction(kit.ballFriction.a)
    .setFrictionCombineRule(RAPIER.CoefficientCombineRule.Min)
    .setRestitution(kit.ballRestitution)
    .setRestitutionCombineRule(RAPIER.CoefficientCombineRule.Average);
}
