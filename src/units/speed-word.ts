export type SpeedWord = 'touch' | 'soft' | 'medium' | 'firm' | 'power' | 'break';

/** Upper bounds in m/s (common practice, no source); a break is anything above the last. */
const UPPER_BOUNDS: readonly (readonly [number, SpeedWord])[] = [
  [0.5, 'touch'],
  [1, 'soft'],
  [2, 'medium'],
  [3, 'firm'],
  [4.5, 'power'],
];

/** What players call a cue-ball speed. A bound belongs to the harder word. */
export function speedWord(speedMps: number): SpeedWord {
  return UPPER_BOUNDS.find(([boundMps]) => speedMps < boundMps)?.[1] ?? 'break';
}
