import { DEFAULT_CUSHION } from '../engine/kit/cushion';
import type { Kit } from '../engine/kit/kit';
import type { BallSet, Cloth, Cue, Table } from './records';

/**
 * What the engine takes, of one cue, cloth, ball set and table. A cue's mass ratio is told against
 * an ordinary ball; a heavier cue ball is deflected less by the same cue.
 */
export function kitOf(cue: Cue, cloth: Cloth, balls: BallSet, table: Table): Kit {
  return {
    massRatio: cue.massRatio * balls.cueBallMassRatio,
    tipRadiusM: cue.tipRadiusM,
    slideFriction: cloth.slideFriction,
    rollFriction: cloth.rollFriction,
    spinDecayRadS2: cloth.spinDecayRadS2,
    bedRestitution: cloth.bedRestitution,
    ballRadiusM: balls.ballRadiusM,
    ballRestitution: balls.ballRestitution,
    ballFriction: balls.ballFriction,
    cueBallMassRatio: balls.cueBallMassRatio,
    bedSlope: table.bedSlope,
    cushion: DEFAULT_CUSHION,
  };
}
