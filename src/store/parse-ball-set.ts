import type { BallFriction } from '../engine/kit/kit';
import { DEFAULT_KIT } from '../engine/kit/kit';
import { BALL_FRICTION_RANGES } from '../engine/kit/kit-ranges';
import { type Mend, mendNumber, mendObject } from './mend';
import { mendNamed } from './parse-named';
import { BALL_RANGES } from './record-ranges';
import type { BallSet } from './records';

/** Mends a ball set that already has an id. */
export const mendBallSet: Mend<BallSet> = mendObject<BallSet>({
  ...mendNamed('Balls without a name'),
  ballRadiusM: mendNumber(BALL_RANGES.ballRadiusM, DEFAULT_KIT.ballRadiusM),
  ballRestitution: mendNumber(BALL_RANGES.ballRestitution, DEFAULT_KIT.ballRestitution),
  ballFriction: mendObject<BallFriction>({
    a: mendNumber(BALL_FRICTION_RANGES.a, DEFAULT_KIT.ballFriction.a),
    b: mendNumber(BALL_FRICTION_RANGES.b, DEFAULT_KIT.ballFriction.b),
    c: mendNumber(BALL_FRICTION_RANGES.c, DEFAULT_KIT.ballFriction.c),
  }),
  cueBallMassRatio: mendNumber(BALL_RANGES.cueBallMassRatio, DEFAULT_KIT.cueBallMassRatio),
});
