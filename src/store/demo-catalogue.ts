import type { ShelfContents } from './contents';
import { usualNumbers } from './kit-fields';

const INCH_M = 0.0254;

/** What every example says of itself. */
const INVENTED = { origin: 'invented', changes: [], like: null } as const;

/** What an example does not say is as usual. */
const USUAL = {
  cues: usualNumbers('cues'),
  cloths: usualNumbers('cloths'),
  balls: usualNumbers('balls'),
  tables: usualNumbers('tables'),
} as const;

const { ballFriction: BALL_FRICTION } = USUAL.balls;
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
      ...USUAL.cues,
      massRatio: 12,
      tipRadiusM: 0.0105,
    },
    {
      id: 'demo-cue-house',
      name: 'House cue',
      ...INVENTED,
      ...USUAL.cues,
    },
    {
      id: 'demo-cue-low',
      name: 'Low-squirt cue',
      ...INVENTED,
      ...USUAL.cues,
      massRatio: 38,
      tipDiameterM: 0.0124,
    },
    {
      id: 'demo-cue-very-low',
      name: 'Very low-squirt cue',
      ...INVENTED,
      ...USUAL.cues,
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
      ...USUAL.cloths,
      slideFriction: 0.16,
      rollFriction: 0.006,
      spinDecayRadS2: 7,
      bedRestitution: 0.55,
    },
    {
      id: 'demo-cloth-club',
      name: 'Club cloth',
      ...INVENTED,
      ...USUAL.cloths,
    },
    {
      id: 'demo-cloth-worn',
      name: 'Worn cloth',
      ...INVENTED,
      ...USUAL.cloths,
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
      ...USUAL.balls,
    },
    {
      id: 'demo-balls-dirty',
      name: 'Dirty pool balls',
      ...INVENTED,
      ...USUAL.balls,
      ballRestitution: 0.93,
      ballFriction: { ...BALL_FRICTION, a: BALL_FRICTION.a * DIRT, b: BALL_FRICTION.b * DIRT },
    },
    {
      id: 'demo-balls-heavy-cue-ball',
      name: 'Pool balls, heavy cue ball',
      ...INVENTED,
      ...USUAL.balls,
      cueBallMassRatio: 1.06,
    },
  ],
  tables: [
    {
      id: 'demo-table-7ft-76',
      name: '7 ft (76 × 38 in)',
      ...INVENTED,
      ...USUAL.tables,
      lengthM: 76 * INCH_M,
      widthM: 38 * INCH_M,
    },
    {
      id: 'demo-table-7ft-78',
      name: '7 ft (78 × 39 in)',
      ...INVENTED,
      ...USUAL.tables,
      lengthM: 78 * INCH_M,
      widthM: 39 * INCH_M,
    },
    {
      id: 'demo-table-8ft',
      name: '8 ft',
      ...INVENTED,
      ...USUAL.tables,
      lengthM: 2.337,
      widthM: 1.168,
    },
    {
      id: 'demo-table-9ft',
      name: '9 ft',
      ...INVENTED,
      ...USUAL.tables,
      lengthM: 2.54,
      widthM: 1.27,
    },
  ],
};
