import { DEFAULT_KIT } from '../engine/kit/kit';
import type { ShelfContents } from './store-port';

const INCH_M = 0.0254;
const { ballFriction } = DEFAULT_KIT;
const LEVEL = { alongM_per_M: 0, rightM_per_M: 0 } as const;

/** What every example says of itself. */
const INVENTED = { origin: 'invented', changes: [], like: null } as const;

/** How much more friction unwashed balls have than clean ones; a guess for the example. */
const DIRT = 1.5;

/**
 * Invented examples, so that the app answers before anything has been measured. None of them is a
 * product; their numbers are spread over what physics and practice allow. The ids are lasting:
 * saved desks refer to them.
 */
export const DEMO_CATALOGUE: ShelfContents = {
  cues: [
    {
      id: 'demo-cue-stiff',
      name: 'Stiff cue',
      ...INVENTED,
      massRatio: 12,
      tipDiameterM: 0.013,
      tipRadiusM: 0.0105,
    },
    {
      id: 'demo-cue-house',
      name: 'House cue',
      ...INVENTED,
      massRatio: DEFAULT_KIT.massRatio,
      tipDiameterM: 0.013,
      tipRadiusM: DEFAULT_KIT.tipRadiusM,
    },
    {
      id: 'demo-cue-low',
      name: 'Low-deflection cue',
      ...INVENTED,
      massRatio: 38,
      tipDiameterM: 0.0124,
      tipRadiusM: 0.0095,
    },
    {
      id: 'demo-cue-very-low',
      name: 'Very low-deflection cue',
      ...INVENTED,
      massRatio: 50,
      tipDiameterM: 0.0118,
      tipRadiusM: 0.009,
    },
  ],
  cloths: [
    {
      id: 'demo-cloth-fast',
      name: 'Fast new cloth',
      ...INVENTED,
      slideFriction: 0.16,
      rollFriction: 0.006,
      spinDecayRadS2: 7,
      bedRestitution: 0.55,
    },
    {
      id: 'demo-cloth-club',
      name: 'Club cloth',
      ...INVENTED,
      slideFriction: DEFAULT_KIT.slideFriction,
      rollFriction: DEFAULT_KIT.rollFriction,
      spinDecayRadS2: DEFAULT_KIT.spinDecayRadS2,
      bedRestitution: DEFAULT_KIT.bedRestitution,
    },
    {
      id: 'demo-cloth-worn',
      name: 'Worn cloth',
      ...INVENTED,
      slideFriction: 0.3,
      rollFriction: 0.014,
      spinDecayRadS2: 16,
      bedRestitution: 0.45,
    },
  ],
  balls: [
    {
      id: 'demo-balls-clean',
      name: 'Clean pool balls',
      ...INVENTED,
      ballRadiusM: DEFAULT_KIT.ballRadiusM,
      ballRestitution: DEFAULT_KIT.ballRestitution,
      ballFriction,
      cueBallMassRatio: DEFAULT_KIT.cueBallMassRatio,
    },
    {
      id: 'demo-balls-dirty',
      name: 'Dirty pool balls',
      ...INVENTED,
      ballRadiusM: DEFAULT_KIT.ballRadiusM,
      ballRestitution: 0.93,
      ballFriction: { ...ballFriction, a: ballFriction.a * DIRT, b: ballFriction.b * DIRT },
      cueBallMassRatio: 1,
    },
    {
      id: 'demo-balls-heavy-cue-ball',
      name: 'Pool balls, heavy cue ball',
      ...INVENTED,
      ballRadiusM: DEFAULT_KIT.ballRadiusM,
      ballRestitution: DEFAULT_KIT.ballRestitution,
      ballFriction,
      cueBallMassRatio: 1.06,
    },
  ],
  tables: [
    {
      id: 'demo-table-7ft-76',
      name: '7 ft (76 × 38 in)',
      ...INVENTED,
      lengthM: 76 * INCH_M,
      widthM: 38 * INCH_M,
      bedSlope: LEVEL,
    },
    {
      id: 'demo-table-7ft-78',
      name: '7 ft (78 × 39 in)',
      ...INVENTED,
      lengthM: 78 * INCH_M,
      widthM: 39 * INCH_M,
      bedSlope: LEVEL,
    },
    {
      id: 'demo-table-8ft',
      name: '8 ft',
      ...INVENTED,
      lengthM: 2.337,
      widthM: 1.168,
      bedSlope: LEVEL,
    },
    {
      id: 'demo-table-9ft',
      name: '9 ft',
      ...INVENTED,
      lengthM: 2.54,
      widthM: 1.27,
      bedSlope: LEVEL,
    },
  ],
};
