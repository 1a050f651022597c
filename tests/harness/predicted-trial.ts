import { buttHeightAt } from '../../src/engine/fit/butt-elevation';
import type { TrialShot } from '../../src/engine/fit/trials/trials';
import { shotsToDo, TRIALS } from '../../src/engine/fit/trials/trials';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { shotName } from '../../src/ui/measure/trial-words';

/** Invented: the kit that is really on the table, with a cue far from the default one's squirt. */
export const KIT_ON_TABLE: Kit = { ...DEFAULT_KIT, massRatio: 42, rollFriction: 0.008 };

/** How far a ball is rolled by hand in the coast trial, m. */
const ROLLED_M = 0.8;
const CUE_LENGTH_M = 1.47;

/** What the kit on the table makes one read, were the stroke as meant. */
export function predictedTrial(name: string) {
  const shot = shotNamed(name);
  const { side, height, elevationRad, speedMps } = shot.stroke;
  const setup = shot.trial === 'coast' ? { ...shot.setup, distanceM: ROLLED_M } : shot.setup;
  const stroke = { aimRad: 0, side, height, elevationRad, speedMps };
  const readings = TRIALS[shot.trial].predict(KIT_ON_TABLE, stroke, setup);
  if (!readings) throw new Error(`${name} leaves nothing to read`);
  const cue = { side, height, cueLengthM: CUE_LENGTH_M };
  return {
    readings,
    buttHeightM: buttHeightAt(elevationRad, cue, KIT_ON_TABLE),
    distanceM: setup.distanceM,
  };
}

function shotNamed(name: string): TrialShot {
  const bed = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };
  const shot = shotsToDo(bed).find((one) => shotName(one, 'mm') === name);
  if (!shot) throw new Error(`there is no shot "${name}"`);
  return shot;
}
