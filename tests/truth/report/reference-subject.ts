import { ballImpact } from '../reference/ball-impact';
import { followBall, type Motion } from '../reference/cue-ball-path';
import { cushionBounce } from '../reference/cushion-bounce';
import { FINE, playShot } from '../reference/play-shot';
import { tipStrike } from '../reference/tip-strike';
import { plus } from '../reference/vec3';
import type { Subject } from './subject';

/** Impulses of a cushion's nose: enough for a tenth of a millimetre a second. */
const INCREMENTS = 20_000;

const follow =
  (until: Motion): Subject['untilRoll'] =>
  (body, kit) =>
    followBall(body, kit, null, FINE, until);

/** The reference, as something to be asked for figures. */
export const REFERENCE_SUBJECT: Subject = {
  name: 'the reference',
  strike: (stroke, kit) => tipStrike(stroke, 0, kit),
  untilRoll: follow('rolling'),
  untilRest: follow('resting'),
  hit(cueBall, bearingRad, kit) {
    const widthM = 2 * kit.ballRadiusM;
    const away = [widthM * Math.sin(bearingRad), widthM * Math.cos(bearingRad), 0] as const;
    const after = ballImpact(cueBall, plus(cueBall.at, away), kit);
    return { cue: after.cueBall, object: after.objectBall };
  },
  rebound: (ball, kit) => cushionBounce(ball, [0, 1, 0], kit.cushion, kit, INCREMENTS),
  objectDirectionRad(shot, kit, aimRad) {
    const velocity = playShot(shot, kit, aimRad).impact?.objectBall.velocity;
    return velocity === undefined ? Number.NaN : Math.atan2(velocity[0], velocity[1]);
  },
};
