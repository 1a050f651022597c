import { directCut } from '../../../../src/engine/goal/goal';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import { kitAlong } from '../../../../src/engine/kit/kit-along';
import { UNMEASURED } from '../../../../src/engine/kit/kit-spread';
import type { LevelShot, LevelTable } from '../../../../src/engine/player/level-test';
import { WPA_POCKETS } from '../../../../src/engine/table/pocket-standard';
import { tableShape } from '../../../../src/engine/table/table-shape';

export const LEVEL_TABLE: LevelTable = {
  shape: tableShape(2.54, 1.27, WPA_POCKETS),
  kit: DEFAULT_KIT,
  spread: UNMEASURED,
};

/** As many invented shots of a level test, each laid elsewhere: cuts to the right, medium. */
export function inventedLevel(count: number): readonly LevelShot[] {
  return Array.from({ length: count }, (_, index) => ({
    shot: {
      distanceM: 0.5 + index / 100,
      cutRad: 0.3,
      side: 0,
      height: 0,
      elevationRad: 0.04,
      speedMps: 1.8,
    },
    target: { kind: 'mouth', distanceM: 0.6, mouthM: 0.12 },
    kit: kitAlong(DEFAULT_KIT, 0.2),
    spread: UNMEASURED,
    position: [
      { name: 'cue', xM: -0.3175, yM: -0.3175 * (index % 4) },
      { name: 1, xM: 0.3175, yM: 0.635 - index / 100 },
    ],
    goal: directCut(1, 'far-right'),
    headingRad: 0.2,
    line: {
      solvedRad: 0.01,
      edges: [-0.1, -0.004, 0.004, 0.1],
      passes: ['thin', 'full'],
      fullSide: 1,
      perTipM: 0,
      perHeightM: 0,
      perSpeedShare: 0,
      perElevation: 0,
      squirt: { aimRad: [0, 0], perTipM: [0, 0] },
      kitSdRad: 0,
      leastSpeed: null,
    },
  }));
}
