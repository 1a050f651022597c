import type { Shot } from '../../src/engine/direct/shot';
import type { FitShot, KitPrior, StrokeScatter } from '../../src/engine/fit/fit-question';
import { type FitReport, fitReport } from '../../src/engine/fit/fit-report';
import type { TrialBed } from '../../src/engine/fit/trials/trial';
import { READING_RANGES, type Readings } from '../../src/engine/fit/trials/trial';
import type { TrialShot } from '../../src/engine/fit/trials/trials';
import { shotsToDo, TRIALS } from '../../src/engine/fit/trials/trials';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import { slopeSeenAlong } from '../../src/engine/kit/kit-along';
import { KIT_QUANTITIES, kitMoved, UNMEASURED } from '../../src/engine/kit/kit-spread';
import { readTrial } from '../truth/reference/read-trial';
import { normalDraw } from './normal-draw';
import { seededRandom } from './seeded-random';

const RAD = Math.PI / 180;

/** How an honest player strays, one standard deviation each (what the project promises for). */
export const HONEST: StrokeScatter = {
  directionRad: 0.4 * RAD,
  tipM: 0.001,
  elevationRad: 0.5 * RAD,
  speedShare: 0.08,
};
/** A steady error of the aim, rad, one standard deviation. */
const AIM_BIAS_RAD = 0.3 * RAD;

/** The middle of every range in which an unmeasured kit may lie. */
export const MIDDLE: KitPrior = {
  parts: { cue: 'cue', cloth: 'cloth', balls: 'balls', table: 'table' },
  kit: {
    ...DEFAULT_KIT,
    massRatio: Math.sqrt(12 * 50),
    slideFriction: Math.sqrt(0.15 * 0.4),
    rollFriction: Math.sqrt(0.005 * 0.016),
    spinDecayRadS2: Math.sqrt(5 * 22),
    ballRestitution: Math.sqrt(0.92 * 0.98),
  },
  spread: UNMEASURED,
};

/** A nine-foot table with pool balls. */
const BED: TrialBed = { lengthM: 2.54, ballRadiusM: DEFAULT_KIT.ballRadiusM };

/** Invented: shots such as a player of a club plays, with side. */
const USUAL_SHOTS: readonly Shot[] = (
  [
    [0.8, 15, 0.3, 3, 1.2],
    [1.2, 30, -0.3, 3, 1.8],
    [1.6, 20, 0.4, 4, 2.2],
    [1, 40, 0.25, 3, 1.5],
    [0.6, 10, -0.4, 5, 2],
    [1.4, 35, 0.2, 3, 2.5],
    [1.1, 25, -0.45, 8, 3],
    [0.8, 25, 0.35, 6, 2.5],
  ] as const
).map(([distanceM, cutDeg, side, elevationDeg, speedMps]) => ({
  distanceM,
  cutRad: cutDeg * RAD,
  side,
  height: 0,
  elevationRad: elevationDeg * RAD,
  speedMps,
}));

/** Every shot that the reference can read, its speed known as a figure. */
export const READABLE: readonly TrialShot[] = shotsToDo(BED)
  .filter(({ trial }) => trial !== 'pivot' && trial !== 'speed')
  .map((shot) => ({ ...shot, stroke: { ...shot.stroke, speedWord: null } }));

const COASTS = READABLE.filter(({ trial }) => trial === 'coast');
const TO_PROPOSE = READABLE.filter(({ trial }) => trial !== 'coast');

/** A kit that nobody has seen, and one who plays with it. */
export interface HiddenPlayer {
  readonly kit: Kit;
  play(shot: TrialShot, id: string): FitShot | null;
}

/** A table's cushions are drawn apart, so that a player is who they were before cushions had numbers. */
const CUSHION_SEED = 0x5c0ff;

/**
 * Readings are made by the reference with laws that the fit does not have: friction between balls
 * follows the slip, and spin dies a third faster or slower than this cloth's kind of number says.
 */
function hiddenPlayer(seed: number): HiddenPlayer {
  const random = seededRandom(seed);
  const normal = () => normalDraw(random);
  const cushion = seededRandom(seed ^ CUSHION_SEED);
  const kit = KIT_QUANTITIES.reduce((drawn, quantity) => {
    const draw = quantity.startsWith('cushion') ? cushion : random;
    return kitMoved(drawn, UNMEASURED, quantity, normalDraw(draw));
  }, MIDDLE.kit);
  const biasRad = AIM_BIAS_RAD * normal();
  const spinDecayRadS2 = kit.spinDecayRadS2 * (random() < 0.5 ? 0.7 : 1.3);
  const tip = HONEST.tipM / (kit.ballRadiusM + kit.tipRadiusM);
  return {
    kit,
    play(shot, id) {
      const { headingRad, ...meant } = shot.stroke;
      const stroke = {
        aimRad: biasRad + HONEST.directionRad * normal(),
        side: meant.side + tip * normal(),
        height: meant.height + tip * normal(),
        elevationRad: Math.abs(meant.elevationRad + HONEST.elevationRad * normal()),
        speedMps: meant.speedMps * Math.exp(HONEST.speedShare * normal()),
      };
      const seen = { ...kit, spinDecayRadS2, bedSlope: slopeSeenAlong(kit.bedSlope, headingRad) };
      const exact = readTrial(shot, stroke, seen, true);
      return (
        exact && {
          id,
          shot,
          readings: misread(shot, exact, normal),
          prior: MIDDLE,
          scatter: HONEST,
        }
      );
    },
  };
}

/** Readings as a tape and a thumb give them. */
function misread({ trial }: TrialShot, exact: Readings, normal: () => number): Readings {
  return Object.fromEntries(
    TRIALS[trial].readings.map(({ name, sd, isShare }) => {
      const value = exact[name] ?? Number.NaN;
      const read = value + (isShare ? sd * value : sd) * normal();
      return [name, Math.max(READING_RANGES[name].min, read)];
    }),
  );
}

/** What a calibration came to. */
export interface Calibrated {
  readonly player: HiddenPlayer;
  readonly shots: readonly FitShot[];
  readonly report: FitReport;
}

/** Two coasts, and then so many shots, each the one that the app proposes. */
export function calibrate(seed: number, shotCount: number): Calibrated {
  const player = hiddenPlayer(seed);
  const shots = COASTS.flatMap((shot, index) => player.play(shot, `coast ${index}`) ?? []);
  let report = reportOn(shots);
  for (let index = 0; index < shotCount; index++) {
    const [best] = report.lessons;
    if (best === undefined) throw new Error('no shot is proposed');
    const played = player.play(best.shot, `shot ${index}`);
    if (played !== null) shots.push(played);
    report = reportOn(shots);
  }
  return { player, shots, report };
}

/** The shots that read cushions and nothing else. */
const OFF_CUSHIONS = READABLE.filter(({ trial }) => trial === 'rebound' || trial === 'angle');

/** Two coasts, and then so many shots off cushions, each of their kinds in turn. */
export function calibrateCushions(seed: number, shotCount: number): Calibrated {
  const player = hiddenPlayer(seed);
  const toPlay = Array.from(
    { length: shotCount },
    (_, index) => OFF_CUSHIONS[index % OFF_CUSHIONS.length] as TrialShot,
  );
  const shots = [...COASTS, ...toPlay].flatMap(
    (shot, index) => player.play(shot, `shot ${index}`) ?? [],
  );
  return { player, shots, report: reportOn(shots) };
}

/** The report on some readings. */
export function reportOn(shots: readonly FitShot[]): FitReport {
  return fitReport({
    shots,
    prior: MIDDLE,
    scatter: HONEST,
    aims: USUAL_SHOTS,
    candidates: TO_PROPOSE,
  });
}

/** The same readings, but that of the last curve is off by a foot: a diamond miscounted. */
export function struckAstray(shots: readonly FitShot[]): readonly FitShot[] {
  const last = shots.map(({ shot }) => shot.trial).lastIndexOf('curve');
  return shots.map((shot, index) => {
    const { landingM } = shot.readings;
    if (index !== last || landingM === undefined) return shot;
    return { ...shot, readings: { ...shot.readings, landingM: landingM + 0.3 } };
  });
}
