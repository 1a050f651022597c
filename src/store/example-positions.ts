import { directCut } from '../engine/goal/goal';
import type { BallName } from '../engine/lie/position';
import type { PocketName } from '../engine/table/pocket-shape';
import type { SavedPosition, Zone } from './saved-position';

/** A ball and where its centre lies from the middle of a nine-foot table, m. */
type Laid = readonly [name: BallName, xM: number, yM: number];

function example(
  number: number,
  name: string,
  balls: readonly Laid[],
  ball: number,
  pocket: PocketName,
  zone: readonly [xM: number, yM: number, radiusM: number] | null = null,
): SavedPosition {
  return {
    id: `demo-position-${number}`,
    name,
    origin: 'invented',
    lengthM: 2.54,
    widthM: 1.27,
    balls: balls.map(([ballName, xM, yM]) => ({ name: ballName, xM, yM })),
    goal: directCut(ball, pocket),
    zone: zone && zoneAt(...zone),
    changedAtMs: 0,
  };
}

function zoneAt(xM: number, yM: number, radiusM: number): Zone {
  return { xM, yM, radiusM };
}

/**
 * Ten invented positions, so that there is something to compare before a ball has been laid. None
 * of them is from a match. The ids are lasting.
 */
export const EXAMPLE_POSITIONS: readonly SavedPosition[] = [
  example(
    1,
    'Long thin cut',
    [
      ['cue', -0.5, -0.75],
      [3, -0.04, 1.1],
      [9, -0.42, 0.1],
    ],
    3,
    'far-right',
  ),
  example(
    2,
    'Long thin cut, back up the table',
    [
      ['cue', 0.45, -0.9],
      [4, -0.1, 0.95],
      [7, 0.05, -0.85],
    ],
    4,
    'far-left',
    [0.05, -0.5, 0.35],
  ),
  example(
    3,
    'Half a ball, and round the table',
    [
      ['cue', 0.2, -0.4],
      [2, 0.2, 0.55],
      [5, -0.35, -0.6],
    ],
    2,
    'far-right',
    [-0.15, -0.3, 0.3],
  ),
  example(
    4,
    'Straight, and stop',
    [
      ['cue', 0.05, 0.2],
      [6, 0.325, 0.7],
      [8, 0.35, 0.25],
    ],
    6,
    'far-right',
    [0.28, 0.62, 0.18],
  ),
  example(
    5,
    'Into the middle',
    [
      ['cue', -0.25, -0.45],
      [1, 0.2, -0.12],
      [2, 0.3, 0.8],
    ],
    1,
    'middle-right',
    [0.1, 0.35, 0.3],
  ),
  example(
    6,
    'Off the rail behind',
    [
      ['cue', -0.1, -1.235],
      [10, 0.25, 0.1],
      [11, -0.4, 0.5],
    ],
    10,
    'far-right',
  ),
  example(
    7,
    'A ball beside the way',
    [
      ['cue', -0.3, -0.7],
      [3, 0.1, 0.65],
      [12, -0.18, 0.0],
    ],
    3,
    'far-right',
  ),
  example(
    8,
    'Thin down the rail',
    [
      ['cue', -0.35, -0.1],
      [13, 0.52, 0.45],
      [14, -0.2, 0.9],
    ],
    13,
    'far-right',
    [-0.2, 0.3, 0.3],
  ),
  example(
    9,
    'Cut back from the rail',
    [
      ['cue', -0.52, 0.1],
      [5, -0.35, -0.35],
      [8, 0.3, -0.9],
    ],
    5,
    'near-left',
  ),
  example(
    10,
    'A cluster to stay clear of',
    [
      ['cue', -0.45, -0.3],
      [1, -0.25, 0.75],
      [6, 0.3, 0.3],
      [7, 0.36, 0.3],
      [15, 0.33, 0.36],
    ],
    1,
    'far-left',
    [0, -0.1, 0.3],
  ),
];
