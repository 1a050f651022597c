import { SPEED_FROM_MPS } from '../engine/stroke/speed-bands';

export type SpeedWord = keyof typeof SPEED_FROM_MPS;

const HARDEST_FIRST = (Object.keys(SPEED_FROM_MPS) as SpeedWord[]).reverse();

/** What players call a cue-ball speed. A bound belongs to the harder word. */
export function speedWord(speedMps: number): SpeedWord {
  return HARDEST_FIRST.find((word) => speedMps >= SPEED_FROM_MPS[word]) ?? 'touch';
}
