import { layoutOf } from '../../src/engine/direct/layout';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { type HeldShot, inputsOf, type StrokeInputs } from '../../src/engine/goal/held-shot';
import type { Target } from '../../src/engine/goal/target';
import { randomQuery } from './random-shots';
import { between, type Random } from './seeded-random';

const RAD = Math.PI / 180;

/** A solved shot at a target. */
export interface SolvedShot {
  readonly held: HeldShot;
  readonly inputs: StrokeInputs;
}

/** A random shot that has an aim, at a random pocket mouth or, one time in four, an angle. */
export function randomSolvedShot(random: Random): SolvedShot {
  for (;;) {
    const { shot, kit } = randomQuery(random);
    const result = solveAim(shot, kit);
    if (!result.ok) continue;
    const layout = layoutOf(shot, kit.ballRadiusM);
    const held = { shot, kit, layout, target: randomTarget(random) };
    return { held, inputs: inputsOf(shot, result.aimRad) };
  }
}

/** Mouths from a tight corner to a generous side pocket (114 and 130 mm, WPA). */
function randomTarget(random: Random): Target {
  if (random() < 0.25) return { kind: 'angle', halfAngleRad: between(random, 0.5, 4) * RAD };
  return {
    kind: 'mouth',
    distanceM: between(random, 0.2, 1.5),
    mouthM: between(random, 0.114, 0.13),
  };
}
