import { computed, type ReadonlySignal } from '@preact/signals';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { LevelTable } from '../../engine/player/level-test';
import type { Table } from '../../store/records';
import type { Work } from '../../worker/engine-pool';
import type { ChooseModel } from '../choose/choose-model';
import { goalOf } from '../choose/position-shot';
import type { DeskModel } from '../desk-model';
import type { PlayerModel } from '../player/player-model';
import type { KnownSpread } from '../room-model';
import type { ShotModel } from '../shot-model';
import { shapeOf } from '../table-in-play';
import type { KeptDrillsPorts } from './kept-drills';
import { createLevelTestModel, type LevelTestModel } from './level-test-model';
import { createPracticeModel, type PracticeModel } from './practice-model';
import { askedOnShot, type Laid, type ShotToLog } from './shot-to-log';

/** What is to be logged, the level test, and practice. */
export interface LogModel {
  /** What Shot asks, as it is logged; null where it has no aim, or it cannot be learnt from. */
  askShot(): ShotToLog | null;
  readonly test: LevelTestModel;
  readonly practice: PracticeModel;
}

export interface LogPorts {
  readonly shot: Pick<ShotModel, 'result' | 'lastAnswer'>;
  readonly desk: Pick<DeskModel, 'pocket'>;
  readonly choose: Pick<ChooseModel, 'shape' | 'open' | 'shot'> & KeptDrillsPorts['choose'];
  readonly player: PlayerModel;
  /** How little is known of the kit along the shot. */
  readonly known: ReadonlySignal<Pick<KnownSpread, 'spread'>>;
  /** What is known of it as seen from the break end. */
  readonly knowledge: ReadonlySignal<KitKnowledge>;
  readonly table: ReadonlySignal<Table>;
  /** Null where the browser cannot work beside the page. */
  readonly work: Work | null;
  /** Does work once the hand rests, unless called off by the function it returns. */
  readonly later: (work: () => void) => () => void;
}

export function createLogModel(ports: LogPorts): LogModel {
  const { shot, desk, choose, player, known, knowledge, table, work, later } = ports;
  const level = computed<LevelTable>(() => {
    const { kit, spread } = knowledge.value;
    return { shape: shapeOf(table.value), kit, spread };
  });
  return {
    askShot() {
      const answered = shot.lastAnswer.value;
      if (answered === null || !shot.result.value.ok) return null;
      const target = { kind: 'mouth', ...desk.pocket.value } as const;
      const laid = answered.shot.headingRad === null ? null : laidOn(choose);
      return askedOnShot(answered, target, known.value.spread, laid);
    },
    test: createLevelTestModel({ player, table: level, lay: work && ((on) => work('level', on)) }),
    practice: createPracticeModel({ player, choose, level, table, knowledge, work, later }),
  };
}

/** What lies on the table of Choose, where it makes a shot. */
function laidOn(choose: LogPorts['choose']): Laid | null {
  const shot = choose.shot.value;
  const goal = goalOf(choose.open.value);
  if (!shot?.ok || goal === null) return null;
  return { shape: choose.shape.value, balls: choose.open.value.balls, goal, shot };
}
