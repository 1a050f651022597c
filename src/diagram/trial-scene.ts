import type { ReadingName } from '../engine/fit/trials/trial';
import type { TrialShot } from '../engine/fit/trials/trials';
import { diamondAt } from '../units/diamond-count';

/** A spot on the bed, m: x right of its middle line, y from the break end's nose, as seen from there. */
export interface TableSpot {
  readonly xM: number;
  readonly yM: number;
}

export interface TableLine {
  readonly from: TableSpot;
  readonly to: TableSpot;
}

export type BallKind = 'cue' | 'object' | 'ghost' | 'rest';

/** What the drawing of a trial shows, in the world. */
export interface TrialScene {
  /** Nose to nose, m; the width is half of it. */
  readonly lengthM: number;
  readonly ballRadiusM: number;
  readonly balls: readonly { readonly kind: BallKind; readonly at: TableSpot }[];
  /** Where to point the cue. */
  readonly aim: TableLine | null;
  /** The way a ball is expected to go. */
  readonly path: TableLine | null;
  /** What is to be read. */
  readonly reading: TableLine | null;
  /** Coins on the right rail, the first beside what is read first. */
  readonly coins: readonly TableSpot[];
  /** A line across the bed from which a ball is timed. */
  readonly mark: TableLine | null;
  /** How many diamonds to count up both long rails. */
  readonly countTo: number;
  /** Whether the far rail carries a rule from its middle diamond. */
  readonly hasRule: boolean;
  /** The stretch of the bed in view, m from the break end's nose. */
  readonly view: { readonly fromYM: number; readonly toYM: number };
}

/** What is being done, as far as the drawing cares. */
export type SceneStep = 'set-up' | ReadingName | 'distance';

const FAR_SHARE = 0.66;
const NEAR_SHARE = 0.55;
/** Half the way through the gate of the pivot trial, in radii: just wider than a ball. */
const GATE_RADII = 2.25;

/**
 * Sets up what a trial's drawing shows.
 * @param expectedM the expected landing, right + of the meant line, or null where none is shown
 */
export function trialScene(
  shot: TrialShot,
  ballRadiusM: number,
  step: SceneStep,
  expectedM: number | null = null,
): TrialScene {
  const lengthM = shot.setup.bedLengthM;
  const blank: TrialScene = {
    lengthM,
    ballRadiusM,
    balls: [],
    aim: null,
    path: null,
    reading: null,
    coins: [],
    mark: null,
    countTo: 2,
    hasRule: false,
    view: { fromYM: 0, toYM: lengthM },
  };
  return { ...blank, ...PARTS[shot.trial]({ shot, ballRadiusM, lengthM, step, expectedM }) };
}

interface Setting {
  readonly shot: TrialShot;
  readonly ballRadiusM: number;
  readonly lengthM: number;
  readonly step: SceneStep;
  readonly expectedM: number | null;
}

type Part = (setting: Setting) => Partial<TrialScene>;

const PARTS: Readonly<Record<TrialShot['trial'], Part>> = {
  line: landing,
  curve: landing,
  speed: run,
  stop,
  throw: thrown,
  coast,
  pivot,
};

const middle = (yM: number): TableSpot => ({ xM: 0, yM });

/** Of a ball that is played or runs to the far cushion from this far before it. */
function placeOf({ shot, ballRadiusM, lengthM }: Setting): TableSpot {
  return middle(lengthM - ballRadiusM - shot.setup.distanceM);
}

function landing(setting: Setting): Partial<TrialScene> {
  const { lengthM, ballRadiusM, step, expectedM } = setting;
  const from = placeOf(setting);
  const touch = lengthM - ballRadiusM;
  if (step === 'landingM') {
    return {
      aim: { from, to: middle(lengthM) },
      hasRule: true,
      view: { fromYM: lengthM * FAR_SHARE, toYM: lengthM },
    };
  }
  return {
    balls: [{ kind: 'cue', at: from }],
    countTo: diamondAt(from.yM, lengthM),
    aim: { from, to: middle(lengthM) },
    path: expectedM === null ? null : { from, to: { xM: expectedM, yM: touch } },
  };
}

function run(setting: Setting): Partial<TrialScene> {
  const from = placeOf(setting);
  return {
    balls: [{ kind: 'cue', at: from }],
    aim: { from, to: middle(setting.lengthM) },
    countTo: setting.step === 'runM' ? 7 : diamondAt(from.yM, setting.lengthM),
  };
}

function stop(setting: Setting): Partial<TrialScene> {
  const { shot, ballRadiusM, lengthM, step } = setting;
  const object = placeOf(setting);
  const ghost = middle(object.yM - 2 * ballRadiusM);
  const cue = middle(ghost.yM - shot.setup.gapM);
  const railXM = lengthM / 4;
  const view = { fromYM: 0, toYM: lengthM * NEAR_SHARE };
  const coins = [ghost, object].map(({ yM }) => ({ xM: railXM, yM }));
  const common = { coins, view, countTo: diamondAt(cue.yM, lengthM) };
  if (step === 'cueBallM') {
    const rest = middle(ghost.yM - 0.1 * lengthM);
    return {
      ...common,
      balls: [
        { kind: 'ghost', at: ghost },
        { kind: 'rest', at: rest },
      ],
      reading: { from: ghost, to: rest },
    };
  }
  if (step === 'objectBallM') {
    const rest = middle(object.yM + 0.2 * lengthM);
    return {
      ...common,
      balls: [
        { kind: 'ghost', at: object },
        { kind: 'object', at: rest },
      ],
      reading: { from: object, to: rest },
    };
  }
  return {
    ...common,
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'object', at: object },
    ],
    aim: { from: cue, to: object },
  };
}

function thrown(setting: Setting): Partial<TrialScene> {
  const { shot, ballRadiusM, lengthM, step } = setting;
  const object = placeOf(setting);
  const ghost = middle(object.yM - 2 * ballRadiusM);
  const { headingRad } = shot.stroke;
  const cue = {
    xM: ghost.xM - shot.setup.gapM * Math.sin(headingRad),
    yM: ghost.yM - shot.setup.gapM * Math.cos(headingRad),
  };
  if (step === 'objectLandingM') {
    return { hasRule: true, countTo: 0, view: { fromYM: lengthM * FAR_SHARE, toYM: lengthM } };
  }
  return {
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'ghost', at: ghost },
      { kind: 'object', at: object },
    ],
    aim: { from: cue, to: ghost },
    path: { from: object, to: middle(lengthM) },
    countTo: diamondAt(object.yM, lengthM),
  };
}

function coast({ shot, lengthM, step }: Setting): Partial<TrialScene> {
  const towards = Math.cos(shot.stroke.headingRad) > 0 ? 1 : -1;
  const start = middle(towards > 0 ? lengthM / 8 : (7 / 8) * lengthM);
  const rest = middle(start.yM + towards * shot.setup.distanceM);
  const mark = {
    from: { xM: -lengthM / 4, yM: start.yM },
    to: { xM: lengthM / 4, yM: start.yM },
  };
  const isRead = step === 'distance';
  return {
    balls: [
      { kind: isRead ? 'ghost' : 'cue', at: start },
      { kind: 'rest', at: rest },
    ],
    path: isRead ? null : { from: start, to: rest },
    reading: isRead ? { from: start, to: rest } : null,
    mark,
    countTo: towards > 0 ? 1 : 7,
  };
}

function pivot({ shot, ballRadiusM, lengthM, step }: Setting): Partial<TrialScene> {
  const cue = middle(lengthM / 4);
  const gateYM = cue.yM + shot.setup.distanceM;
  const handYM = cue.yM - 0.11 * lengthM;
  return {
    balls: [
      { kind: 'cue', at: cue },
      { kind: 'object', at: { xM: -GATE_RADII * ballRadiusM, yM: gateYM } },
      { kind: 'object', at: { xM: GATE_RADII * ballRadiusM, yM: gateYM } },
    ],
    aim: { from: cue, to: middle(gateYM) },
    reading: step === 'bridgeM' ? { from: middle(cue.yM - ballRadiusM), to: middle(handYM) } : null,
    countTo: 5,
    view: { fromYM: 0, toYM: lengthM * 0.75 },
  };
}
