import type { BallState } from '../../../src/engine/ball/ball-state';
import { playAim } from '../../../src/engine/direct/play-aim';
import { afterContact, kickOf, newKick } from '../../../src/engine/impacts/ball-on-ball';
import { afterCushion } from '../../../src/engine/impacts/cushion';
import { strike } from '../../../src/engine/impacts/strike';
import { travel } from '../../../src/engine/motion/journey';
import type { Body } from '../reference/body';
import type { Subject } from './subject';

/** The engine, as something to be asked for figures: its own functions, and no formula of theirs. */
export const ENGINE_SUBJECT: Subject = {
  name: 'the engine',
  strike: (stroke, kit) => bodyOf(strike({ ...stroke, aimRad: 0 }, kit)),
  untilRoll(body, kit) {
    const { phases, end, endS } = travel(stateOf(body), 0, kit, []);
    const roll = phases.find(({ motion }) => motion === 'rolling');
    return { body: bodyOf(roll?.start ?? end), timeS: roll?.startS ?? endS };
  },
  untilRest(body, kit) {
    const { end, endS } = travel(stateOf(body), 0, kit, []);
    return { body: bodyOf(end), timeS: endS };
  },
  hit(cueBall, bearingRad, kit) {
    const [nx, ny] = [Math.sin(bearingRad), Math.cos(bearingRad)];
    const kick = newKick();
    kickOf(stateOf(cueBall), nx, ny, 0, kit, kick);
    const after = afterContact(stateOf(cueBall), nx, ny, 0, kick, kit);
    return { cue: bodyOf(after.cueBall), object: bodyOf(after.objectBall) };
  },
  rebound: (ball, kit) => bodyOf(afterCushion(stateOf(ball), 0, 1, kit)),
  objectDirectionRad(shot, kit, aimRad) {
    const played = playAim(shot, kit, aimRad);
    return (played.ok ? played.objectBall.directionRad : null) ?? Number.NaN;
  },
};

export function bodyOf({ xM, yM, zM, vx, vy, vz, wx, wy, wz }: BallState): Body {
  return { at: [xM, yM, zM], velocity: [vx, vy, vz], spin: [wx, wy, wz] };
}

export function stateOf({
  at: [xM, yM, zM],
  velocity: [vx, vy, vz],
  spin: [wx, wy, wz],
}: Body): BallState {
  return { xM, yM, zM, vx, vy, vz, wx, wy, wz };
}
