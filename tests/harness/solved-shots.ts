import { type Shot, strokeOf } from '../../src/engine/direct/shot';
import { solveAim } from '../../src/engine/direct/solve-aim';
import { directPot } from '../../src/engine/goal/direct-pot';
import type { Target } from '../../src/engine/goal/target';
import type { Task } from '../../src/engine/goal/task';
import type { Kit } from '../../src/engine/kit/kit';
import type { Stroke } from '../../src/engine/stroke/stroke';
import { randomQuery } from './random-shots';
import { between, type Random } from './seeded-random';

const RAD = Math.PI / 180;

/** A solved shot at a target. */
export interface SolvedShot {
  readonly shot: Shot;
  readonly kit: Kit;
  readonly task: Task;
  readonly stroke: Stroke;
}

/** A random shot that has an aim, at a random pocket mouth or, one time in four, an angle. */
export function randomSolvedShot(random: Random): SolvedShot {
  for (;;) {
    const { shot, kit } = randomQuery(random);
    const result = solveAim(shot, kit);
    if (!result.ok) continue;
    const task = directPot(shot, randomTarget(random), kit.ballRadiusM);
    return { shot, kit, task, stroke: strokeOf(shot, result.aimRad) };
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
