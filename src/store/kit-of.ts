import type { Kit } from '../engine/kit/kit';
import { numbersOfPart } from '../engine/kit/kit-numbers';
import type { BallSet, Cloth, Cue, Table } from './records';

/**
 * What the engine takes, of one cue, cloth, ball set and table. A cue's mass ratio is told against
 * an ordinary ball; a heavier cue ball is deflected less by the same cue.
 */
export function kitOf(cue: Cue, cloth: Cloth, balls: BallSet, table: Table): Kit {
  return {
    ...numbersOfPart('cue', cue),
    ...numbersOfPart('cloth', cloth),
    ...numbersOfPart('balls', balls),
    ...numbersOfPart('table', table),
    massRatio: cue.massRatio * balls.cueBallMassRatio,
  };
}
