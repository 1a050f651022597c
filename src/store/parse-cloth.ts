import { DEFAULT_KIT } from '../engine/kit/kit';
import { type Mend, mendNumber, mendObject } from './mend';
import { mendNamed } from './parse-named';
import { CLOTH_RANGES } from './record-ranges';
import type { Cloth } from './records';

/** Mends a cloth that already has an id. */
export const mendCloth: Mend<Cloth> = mendObject<Cloth>({
  ...mendNamed('Cloth without a name'),
  slideFriction: mendNumber(CLOTH_RANGES.slideFriction, DEFAULT_KIT.slideFriction),
  rollFriction: mendNumber(CLOTH_RANGES.rollFriction, DEFAULT_KIT.rollFriction),
  spinDecayRadS2: mendNumber(CLOTH_RANGES.spinDecayRadS2, DEFAULT_KIT.spinDecayRadS2),
  bedRestitution: mendNumber(CLOTH_RANGES.bedRestitution, DEFAULT_KIT.bedRestitution),
});
