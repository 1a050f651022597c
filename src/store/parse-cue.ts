import { DEFAULT_KIT } from '../engine/kit/kit';
import { type Mend, mendNumber, mendObject } from './mend';
import { mendNamed } from './parse-named';
import { CUE_RANGES } from './record-ranges';
import type { Cue } from './records';

const ORDINARY_TIP_DIAMETER_M = 0.013;

/** Mends a cue that already has an id. */
export const mendCue: Mend<Cue> = mendObject<Cue>({
  ...mendNamed('Cue without a name'),
  massRatio: mendNumber(CUE_RANGES.massRatio, DEFAULT_KIT.massRatio),
  tipDiameterM: mendNumber(CUE_RANGES.tipDiameterM, ORDINARY_TIP_DIAMETER_M),
  tipRadiusM: mendNumber(CUE_RANGES.tipRadiusM, DEFAULT_KIT.tipRadiusM),
});
