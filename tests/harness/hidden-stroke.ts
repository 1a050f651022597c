import { allowedRad } from '../../src/engine/goal/target';
import { DEFAULT_KIT, type Kit } from '../../src/engine/kit/kit';
import {
  KIT_QUANTITIES,
  type KitSpread,
  kitMoved,
  UNMEASURED,
} from '../../src/engine/kit/kit-spread';
import type { LoggedShot } from '../../src/engine/player/learn';
import type { Player } from '../../src/engine/player/player-of';
import { strokeByRule } from '../../src/engine/player/player-rule';
import {
  type AskedShot,
  lineScatter,
  type PlainLine,
  type Result,
  type ShotLine,
  shotLine,
} from '../../src/engine/player/shot-line';
import { questionShot } from '../../src/engine/player/the-question';
import { chanceOf } from '../../src/engine/room/chance';
import { ballImpact } from '../truth/reference/ball-impact';
import type { Body } from '../truth/reference/body';
import { followBall, type PathOptions } from '../truth/reference/cue-ball-path';
import { objectBallAt } from '../truth/reference/play-shot';
import { stretchRunner } from '../truth/reference/stretch';
import { tipStrike } from '../truth/reference/tip-strike';
import { normalDraw } from './normal-draw';
import { between, type Random, seededRandom } from './seeded-random';

const RAD = Math.PI / 180;
/** Nothing of the kit is unknown. */
const KNOWN = Object.fromEntries(KIT_QUANTITIES.map((name) => [name, 0])) as KitSpread;
/** Hidden of the cue and the cloth are squirt and how side dies; the rest of the kit is as it is taken to be. */
export const HIDDEN_SPREAD: KitSpread = {
  ...KNOWN,
  massRatio: UNMEASURED.massRatio,
  spinDecayRadS2: UNMEASURED.spinDecayRadS2,
};
/** Close to a hundredth of a millimetre. */
const FAIR: PathOptions = { run: stretchRunner(1e-7), restSpeedMps: 1e-4 };
/** Of what is written down, what is wrong. */
export const FALSE_SHARE = 0.03;

/** A player nobody has seen, not drawn from what is taken to be usual. */
export interface HiddenStroke {
  /** On the question's shot, direction and sideways tip together; rad. */
  readonly lineRad: number;
  readonly aimBiasRad: number;
  readonly fullBiasRad: number;
  /** How often it makes a shot aimed by its solved aim: what a forecaster says who knows all of it. */
  chanceOf(line: ShotLine): number;
  /** Plays a shot at an aim from its solved one, rad: what becomes of it, truly and as written down. */
  play(asked: AskedShot, line: ShotLine): { readonly truly: Result; readonly told: Result };
}

/** A stroke with its steady errors, as nobody sees it. */
interface HiddenNumbers extends Player {
  readonly lineRad: number;
  readonly spinDecayTimes: number;
}

/**
 * Line scatter from 0.06° to 0.6°, tip by the rule times e^N(0, 0.3), `together` from 0 to 0.6, steady
 * errors, and a cue of its own squirt.
 *
 * @param questionOn the question's line on a cue of so much squirt, in prior deviations
 */
export function hiddenNumbers(
  random: Random,
  questionOn: (squirtSds: number) => Pick<PlainLine, 'perTipM'>,
): HiddenNumbers {
  const normal = () => normalDraw(random);
  const squirtSds = normal();
  const spinDecayTimes = random() < 0.5 ? 0.7 : 1.3;
  const lineRad = 0.06 * RAD * (0.6 / 0.06) ** random();
  const tipTimes = Math.exp(0.3 * normal());
  const together = between(random, 0, 0.6);
  const strokeAt = (directionRad: number) => {
    const stroke = strokeByRule(directionRad);
    return { ...stroke, tipM: stroke.tipM * tipTimes, together };
  };
  const question = questionOn(squirtSds);
  const directionRad = solved((at) => lineScatter(strokeAt(at), question) - lineRad);
  return {
    lineRad,
    squirtSds,
    spinDecayTimes,
    stroke: strokeAt(directionRad),
    aimBiasRad: 0.1 * RAD * normal(),
    fullBiasRad: 0.1 * RAD * normal(),
    speedBias: 0.05 * normal(),
  };
}

/** What of the line the tip makes hangs on the cue that is really played with. */
function questionOnCue(squirtSds: number): PlainLine {
  const kit = kitMoved(DEFAULT_KIT, UNMEASURED, 'massRatio', squirtSds);
  const line = shotLine(questionShot(kit, HIDDEN_SPREAD));
  if (line === null) throw new Error('the question has no answer on this kit');
  return line;
}

export function hiddenStroke(seed: number): HiddenStroke {
  const random = seededRandom(seed);
  const normal = () => normalDraw(random);
  const hidden = hiddenNumbers(random, questionOnCue);
  const { lineRad, stroke, aimBiasRad, fullBiasRad, speedBias } = hidden;
  const { directionRad, together } = stroke;
  const moved = kitMoved(DEFAULT_KIT, UNMEASURED, 'massRatio', hidden.squirtSds);
  const kit: Kit = {
    ...moved,
    spinDecayRadS2: moved.spinDecayRadS2 * hidden.spinDecayTimes,
  };
  return {
    lineRad,
    aimBiasRad,
    fullBiasRad,
    chanceOf({ task, stroke: meant, fullSide }) {
      const aimRad = meant.aimRad + aimBiasRad + fullSide * fullBiasRad;
      const speedMps = meant.speedMps * (1 + speedBias);
      return chanceOf(task, kit, { ...meant, aimRad, speedMps }, stroke, KNOWN).share;
    },
    play({ shot, target }, line) {
      const tip = stroke.tipM / (kit.ballRadiusM + kit.tipRadiusM);
      const turn = normal();
      const apart = Math.sqrt(1 - together * together) * normal();
      const aimRad =
        line.stroke.aimRad + aimBiasRad + line.fullSide * fullBiasRad + directionRad * turn;
      const struck = {
        ...shot,
        side: shot.side + tip * (together * turn + apart),
        height: shot.height + tip * normal(),
        elevationRad: Math.abs(shot.elevationRad + stroke.elevationRad * normal()),
        speedMps: shot.speedMps * (1 + speedBias + stroke.speedShare * normal()),
      };
      const at = objectBallAt(shot, kit);
      const arrival = followBall(
        tipStrike(struck, aimRad, kit),
        kit,
        { at, reachM: 2 * kit.ballRadiusM },
        FAIR,
      );
      const truly = arrival.touched
        ? resultOf(ballImpact(arrival.body, at, kit, { bits: 24, following: true }).objectBall)
        : 'untouched';
      return { truly, told: random() < FALSE_SHARE ? another(random, line) : truly };

      function resultOf(objectBall: Body): Result {
        const rest = followBall(objectBall, kit, null, FAIR).body.at;
        const ranM = Math.hypot(rest[0] - at[0], rest[1] - at[1]);
        if (target.kind === 'mouth' && ranM < target.distanceM) return 'short';
        const [x, y] = objectBall.velocity;
        const missRad = Math.atan2(x, y) - shot.cutRad;
        return passed(missRad, allowedRad(target, kit.ballRadiusM), line.fullSide);
      }
    },
  };
}

function passed(missRad: number, allowed: number, fullSide: ShotLine['fullSide']): Result {
  if (Math.abs(missRad) <= allowed) return 'went';
  if (fullSide === 0) return missRad > 0 ? 'right' : 'left';
  return missRad * fullSide > 0 ? 'thin' : 'full';
}

function another(random: Random, { passes }: ShotLine): Result {
  const all: readonly Result[] = ['went', ...passes, 'short', 'untouched'];
  return all[Math.floor(random() * all.length)] ?? 'went';
}

/** Where something that grows with a direction's scatter is 0, rad. */
function solved(of: (at: number) => number): number {
  let [low, high] = [0.005 * RAD, 2 * RAD];
  for (let halving = 0; halving < 50; halving++) {
    const middle = Math.sqrt(low * high);
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Invented: a shot such as anybody plays in an evening; three in five without side. */
export function ordinaryShot(random: Random): AskedShot {
  const side = random() < 0.6 ? 0 : between(random, -0.3, 0.3);
  return {
    shot: {
      distanceM: between(random, 0.3, 1.8),
      cutRad: between(random, -50, 50) * RAD,
      side,
      height: 0,
      elevationRad: between(random, 2, 5) * RAD,
      speedMps: between(random, 1, 2.5),
    },
    target: { kind: 'mouth', distanceM: between(random, 0.3, 1.5), mouthM: 0.116 },
    kit: DEFAULT_KIT,
    spread: HIDDEN_SPREAD,
  };
}

/** A shot with what was written down of it. */
export function logged(line: ShotLine, result: Result): LoggedShot {
  return { line, aimOffRad: 0, result };
}
