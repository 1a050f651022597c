import { ballImpact } from '../reference/ball-impact';
import { followBall, type Motion } from '../reference/cue-ball-path';
import { FINE, playShot } from '../reference/play-shot';
import { tipStrike } from '../reference/tip-strike';
import { plus } from '../reference/vec3';
import type { Subject } from './subject';

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
  objectDirectionRad(shot, kit, aimRad) {
    const velocity = playShot(shot, kit, aimRad).impact?.objectBall.velocity;
    return velocity === undefined ? Number.NaN : Math.atan2(velocity[0], velocity[1]);
  },
};
