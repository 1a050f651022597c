import { expect, it } from 'vitest';
import { goes, missAt } from '../../src/engine/goal/task';
import type { Kit } from '../../src/engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitSpread,
  kitMoved,
  UNMEASURED,
} from '../../src/engine/kit/kit-spread';
import { chanceOf } from '../../src/engine/room/chance';
import {
  INVENTED_PROFILES,
  type SteadyErrors,
  type StrokeProfile,
} from '../../src/engine/room/stroke-profile';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';
import { normalDraw } from '../harness/normal-draw';
import { between, type Random, seededRandom } from '../harness/seeded-random';
import { randomSolvedShot, type SolvedShot } from '../harness/solved-shots';

const SHOTS = 100;
const PLAYS = campaignSize(1500, 100_000);

/** What is not known of a kit on a table known to be level: tilted beds are slow to play. */
const LEVEL: KitSpread = { ...UNMEASURED, bedSlopeAlong: 0, bedSlopeRight: 0 };
const PROFILES = Object.values(INVENTED_PROFILES);
/** Of every second player, up to: some 0.2° aside, a tenth of the speed, and a cue of another squirt. */
const MOST_OFF = { aimRad: 0.0035, fullRad: 0.0035, speedShare: 0.1, massRatio: 0.3 } as const;

function steadyErrors(random: Random): SteadyErrors {
  const upTo = (most: number) => between(random, -most, most);
  return {
    aimRad: upTo(MOST_OFF.aimRad),
    fullRad: upTo(MOST_OFF.fullRad),
    speedShare: upTo(MOST_OFF.speedShare),
    massRatioTimes: Math.exp(upTo(MOST_OFF.massRatio)),
  };
}

function drawnKit(kit: Kit, spread: KitSpread, random: Random): Kit {
  return KIT_QUANTITIES.filter((quantity) => spread[quantity] > 0).reduce(
    (moved, quantity) => kitMoved(moved, spread, quantity, normalDraw(random)),
    kit,
  );
}

const NO_ERRORS: SteadyErrors = { aimRad: 0, fullRad: 0, speedShare: 0 };

/** The plain way: every error drawn, every stroke played. */
function playedShare(
  { shot, task, kit: thought, stroke }: SolvedShot,
  profile: StrokeProfile,
  spread: KitSpread,
  random: Random,
): number {
  const apart = Math.sqrt(1 - profile.together ** 2);
  const { aimRad, fullRad, speedShare, massRatioTimes = 1 } = profile.steady ?? NO_ERRORS;
  const kit = { ...thought, massRatio: thought.massRatio * massRatioTimes };
  const tip = profile.tipM / (kit.ballRadiusM + kit.tipRadiusM);
  const middle = {
    aimRad: stroke.aimRad + aimRad + Math.sign(shot.cutRad) * fullRad,
    speedMps: stroke.speedMps * (1 + speedShare),
  };
  let gone = 0;
  for (let count = 0; count < PLAYS; count++) {
    const direction = normalDraw(random);
    const miss = missAt(task, drawnKit(kit, spread, random), {
      aimRad: middle.aimRad + profile.directionRad * direction,
      side: stroke.side + tip * (profile.together * direction + apart * normalDraw(random)),
      height: stroke.height + tip * normalDraw(random),
      speedMps: Math.max(0.02, middle.speedMps * (1 + profile.speedShare * normalDraw(random))),
      elevationRad: Math.abs(stroke.elevationRad + profile.elevationRad * normalDraw(random)),
    });
    if (goes(miss)) gone++;
  }
  return gone / PLAYS;
}

it(
  `agrees with ${PLAYS} plays of each of ${SHOTS} shots within the error it states`,
  () => {
    const [random, errors] = [seededRandom(40), seededRandom(42)];
    const excesses: number[] = [];
    for (let count = 0; count < SHOTS; count++) {
      const solved = randomSolvedShot(random);
      const usual = PROFILES[count % PROFILES.length] ?? INVENTED_PROFILES.club;
      const profile = count % 2 === 0 ? usual : { ...usual, steady: steadyErrors(errors) };
      const spread = count % 10 === 0 ? UNMEASURED : LEVEL;
      const { share, error } = chanceOf(solved.task, solved.kit, solved.stroke, profile, spread);
      const played = playedShare(solved, profile, spread, random);
      const sampling = Math.sqrt((played * (1 - played)) / PLAYS);
      excesses.push((share - played) / Math.hypot(error, sampling));
    }
    const meanSquare = excesses.reduce((sum, excess) => sum + excess ** 2, 0) / SHOTS;
    expect(excesses).toHaveLength(SHOTS);
    expect(Math.max(...excesses.map(Math.abs))).toBeLessThan(4);
    expect(Math.sqrt(meanSquare)).toBeLessThan(1.2);
  },
  CAMPAIGN_TIMEOUT_MS,
);

it('is the same every time', () => {
  const { task, kit, stroke } = randomSolvedShot(seededRandom(41));
  const chance = () => chanceOf(task, kit, stroke, INVENTED_PROFILES.club, UNMEASURED);
  expect(chance()).toEqual(chance());
});
