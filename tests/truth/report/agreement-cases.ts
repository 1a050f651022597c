import { INPUT_RANGES } from '../../../src/engine/direct/input-ranges';
import type { Shot } from '../../../src/engine/direct/shot';
import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import { KIT_NUMBERS } from '../../../src/engine/kit/kit-numbers';
import type { Range } from '../../../src/engine/numerics/range';
import { MISCUE_LIMIT } from '../../../src/engine/stroke/miscue-limit';
import { randomQuery } from '../../harness/random-shots';
import { between, type Random, seededRandom } from '../../harness/seeded-random';

/** A stroke to be played by two independent hands. */
export interface AgreementCase {
  readonly shot: Shot;
  readonly kit: Kit;
  readonly aimRad: number;
}

/** Strokes drawn in the same way. */
export interface CaseFamily {
  readonly name: string;
  readonly cases: readonly AgreementCase[];
}

/** Aims are spread this far to either side of the object ball's centre, in ball widths. */
const SPREAD = 1.3;
/** Of a bed that is not level, up to, along and across: some four times what the WPA allows. */
const TILT = 0.002;

/**
 * Shots of play whose ball never leaves the bed, shots of play with their hops on level and on
 * tilted beds, and shots from all over what the engine accepts.
 */
export function agreementFamilies(): readonly CaseFamily[] {
  return [
    { name: 'on the bed all the way', cases: drawn(4, 700, groundedQuery) },
    { name: 'shots of play, level bed', cases: drawn(1, 1200, (random) => randomQuery(random)) },
    {
      name: 'shots of play, tilted bed',
      cases: drawn(2, 1200, (random) => randomQuery(random, TILT)),
    },
    { name: 'all that is accepted', cases: drawn(3, 1600, anyQuery) },
  ];
}

type Draw = (random: Random) => Omit<AgreementCase, 'aimRad'>;

function drawn(seed: number, count: number, draw: Draw): AgreementCase[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => {
    const { shot, kit } = draw(random);
    return { shot, kit, aimRad: aimNear(shot, kit, random) };
  });
}

/** Somewhere about the object ball; nothing is known yet of how the cue ball will curve. */
function aimNear({ distanceM, cutRad }: Shot, kit: Kit, random: Random): number {
  const widthM = 2 * kit.ballRadiusM;
  const [xM, yM] = [widthM * Math.sin(cutRad), distanceM + widthM * Math.cos(cutRad)];
  const spread = Math.asin(Math.min(1, (SPREAD * widthM) / Math.hypot(xM, yM)));
  const aimRad = Math.atan2(xM, yM) + between(random, -spread, spread);
  return Math.max(-Math.PI / 2, Math.min(Math.PI / 2, aimRad));
}

/** Struck at or above the centre, where the bed takes all of what drives the ball into it. */
function groundedQuery(random: Random): Omit<AgreementCase, 'aimRad'> {
  const { shot, kit } = randomQuery(random, random() < 0.5 ? 0 : TILT);
  return {
    shot: { ...shot, height: Math.abs(shot.height) },
    kit: { ...kit, bedRestitution: 0 },
  };
}

/** Uniform over every accepted range; open or far-reaching ones are cut to what still differs. */
function anyQuery(random: Random): Omit<AgreementCase, 'aimRad'> {
  const within = ({ min, max }: Range) => between(random, min, max);
  const offset = within({ min: 0, max: MISCUE_LIMIT });
  const clock = within({ min: 0, max: 2 * Math.PI });
  const shot = {
    distanceM: within(INPUT_RANGES.distanceM),
    cutRad: within(INPUT_RANGES.cutRad),
    side: offset * Math.cos(clock),
    height: offset * Math.sin(clock),
    elevationRad: within(INPUT_RANGES.elevationRad),
    speedMps: within(INPUT_RANGES.speedMps),
  };
  const kit: Kit = {
    ...DEFAULT_KIT,
    massRatio: within({ min: KIT_NUMBERS.massRatio.range.min, max: 200 }),
    slideFriction: within(KIT_NUMBERS.slideFriction.range),
    rollFriction: within(KIT_NUMBERS.rollFriction.range),
    spinDecayRadS2: within(KIT_NUMBERS.spinDecayRadS2.range),
    ballRestitution: within(KIT_NUMBERS.ballRestitution.range),
    bedRestitution: within(KIT_NUMBERS.bedRestitution.range),
    ballRadiusM: within(KIT_NUMBERS.ballRadiusM.range),
    cueBallMassRatio: within(KIT_NUMBERS.cueBallMassRatio.range),
    ballFriction: {
      a: within(KIT_NUMBERS['ballFriction.a'].range),
      b: within(KIT_NUMBERS['ballFriction.b'].range),
      c: within(KIT_NUMBERS['ballFriction.c'].range),
    },
  };
  // A bed on which the ball never rests is refused; so tilted at most nine tenths of that.
  const steepest = Math.min(
    KIT_NUMBERS['bedSlope.alongM_per_M'].range.max,
    0.9 * (7 / 5) * kit.rollFriction,
  );
  const downhill = within({ min: 0, max: 2 * Math.PI });
  const tilt = random() < 0.5 ? 0 : within({ min: 0, max: steepest });
  const bedSlope = {
    alongM_per_M: tilt * Math.cos(downhill),
    rightM_per_M: tilt * Math.sin(downhill),
  };
  return { shot, kit: { ...kit, bedSlope } };
}
