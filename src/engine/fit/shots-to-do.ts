import { RAD_PER_DEG } from '../numerics/angle';
import type { MeantStroke, SpeedWord, TrialSetup, TrialShot } from './trial-shot';

/** The table the trials are done on. */
export interface TrialBed {
  /** Nose to nose, m. */
  readonly lengthM: number;
  readonly ballRadiusM: number;
}

/** What a player means by each word, m/s, until it is measured (common practice, no source). */
export const USUAL_SPEEDS: { readonly [W in SpeedWord]: number } = {
  soft: 0.75,
  medium: 1.5,
  firm: 3,
};

/** As level as a bridge on the open table allows (common practice, no source). */
export const LEVEL_RAD = 3 * RAD_PER_DEG;
/** Just inside the miscue limit. */
const SIDE = 0.45;
const LEVEL_SIDE = { side: SIDE, height: 0 };
/** As far out, but low: the ball slides longer, and its path tells more of the cloth. */
const LOW_SIDE = { side: 0.33, height: -0.3 };
/** The cue is raised no further: higher, a firm stroke begins to endanger the cloth (our judgement). */
const RAISED_RAD = [10 * RAD_PER_DEG, 20 * RAD_PER_DEG];
const STOP_HEIGHT = -0.45;
const STOP_GAPS_M = [0.03, 0.05, 0.07, 0.1, 0.15];
const THROW_CUT_RAD = 30 * RAD_PER_DEG;
/** A ball's width between the two: so near, a crooked aim hardly turns the line of centres. */
const THROW_GAP_BALLS = 1;
const BOTH_SIDES = [-1, 1] as const;

const CENTRE_HIT: MeantStroke = {
  headingRad: 0,
  side: 0,
  height: 0,
  elevationRad: LEVEL_RAD,
  speedMps: USUAL_SPEEDS.medium,
  speedWord: 'medium',
};

function spoken(word: SpeedWord) {
  return { speedWord: word, speedMps: USUAL_SPEEDS[word] };
}

/** Every shot of every trial that can be done on a table, from the break end and back. */
export function shotsToDo(bed: TrialBed): readonly TrialShot[] {
  return [
    ...lines(bed),
    ...curves(bed),
    ...stops(bed),
    ...throws(bed),
    ...coasts(bed),
    ...pivots(bed),
    ...speeds(bed),
  ];
}

/** From a diamond's line to where the ball's centre is when it touches the far cushion. */
function fromDiamond(diamond: number, { lengthM, ballRadiusM }: TrialBed): TrialSetup {
  return setup(lengthM, { distanceM: (1 - diamond / 8) * lengthM - ballRadiusM });
}

function setup(bedLengthM: number, given: Partial<TrialSetup>): TrialSetup {
  return { distanceM: 0, gapM: 0, cutRad: 0, bedLengthM, ...given };
}

function lines(bed: TrialBed): TrialShot[] {
  return BOTH_SIDES.map((sign) => ({
    trial: 'line',
    stroke: { ...CENTRE_HIT, side: sign * SIDE, ...spoken('firm') },
    setup: fromDiamond(1, bed),
  }));
}

function curves(bed: TrialBed): TrialShot[] {
  return RAISED_RAD.flatMap((elevationRad) =>
    (['medium', 'firm'] as const).flatMap((word) =>
      BOTH_SIDES.flatMap((sign) =>
        [LEVEL_SIDE, LOW_SIDE].map<TrialShot>(({ side, height }) => ({
          trial: 'curve',
          stroke: { ...CENTRE_HIT, side: sign * side, height, elevationRad, ...spoken(word) },
          setup: fromDiamond(1, bed),
        })),
      ),
    ),
  );
}

/**
 * The cue ball on the first diamond's line, the object ball straight before it. Played any harder,
 * the object ball would come to the far cushion.
 */
function stops({ lengthM, ballRadiusM }: TrialBed): TrialShot[] {
  const room = (7 / 8) * lengthM - ballRadiusM;
  return STOP_GAPS_M.map((gapM) => ({
    trial: 'stop',
    stroke: { ...CENTRE_HIT, height: STOP_HEIGHT, ...spoken('soft') },
    setup: setup(lengthM, { gapM, distanceM: room - gapM - 2 * ballRadiusM }),
  }));
}

/** The object ball two diamonds before the far cushion: further off, a soft one might not reach it. */
function throws({ lengthM, ballRadiusM }: TrialBed): TrialShot[] {
  const at = { gapM: THROW_GAP_BALLS * 2 * ballRadiusM, distanceM: lengthM / 4 - ballRadiusM };
  return BOTH_SIDES.flatMap<TrialShot>((sign) => [
    {
      trial: 'throw',
      stroke: { ...CENTRE_HIT, side: sign * SIDE },
      setup: setup(lengthM, at),
    },
    {
      trial: 'throw',
      stroke: { ...CENTRE_HIT, headingRad: -sign * THROW_CUT_RAD },
      setup: setup(lengthM, { ...at, cutRad: sign * THROW_CUT_RAD }),
    },
  ]);
}

/** Up and down the table alike: the difference tells how it lies. */
function coasts({ lengthM }: TrialBed): TrialShot[] {
  return [0, Math.PI].map((headingRad) => ({
    trial: 'coast',
    stroke: { ...CENTRE_HIT, headingRad, ...spoken('soft') },
    setup: setup(lengthM, { distanceM: (5 / 8) * lengthM }),
  }));
}

function pivots({ lengthM }: TrialBed): TrialShot[] {
  return BOTH_SIDES.map((sign) => ({
    trial: 'pivot',
    stroke: { ...CENTRE_HIT, side: sign * SIDE, ...spoken('firm') },
    setup: setup(lengthM, { distanceM: (3 / 8) * lengthM }),
  }));
}

function speeds(bed: TrialBed): TrialShot[] {
  return (['soft', 'medium', 'firm'] as const).map((word) => ({
    trial: 'speed',
    stroke: { ...CENTRE_HIT, ...spoken(word) },
    setup: fromDiamond(1, bed),
  }));
}
