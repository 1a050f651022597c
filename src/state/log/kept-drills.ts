import { computed, type ReadonlySignal } from '@preact/signals';
import { solveAim } from '../../engine/direct/solve-aim';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { shotFrom } from '../../engine/goal/shot-from-position';
import type { Stroke } from '../../engine/stroke/stroke';
import type { TablePlay } from '../../engine/table/table-play';
import type { Table } from '../../store/records';
import type { KeptDrill, SavedPosition } from '../../store/saved-position';
import { noShotWords } from '../../words/no-shot-words';
import { PLAYER_PROBLEMS } from '../../words/player-problems';
import type { Work } from '../../worker/engine-pool';
import type { ChooseModel } from '../choose/choose-model';
import { positionOnTable } from '../choose/position-on-table';
import { goalOf } from '../choose/position-shot';
import { type CopyResult, NOT_THERE } from '../edit-result';
import { knownAlongShot } from '../measure/known-along-shot';
import type { WhatBecame } from '../player/played-edits';
import type { PlayerModel } from '../player/player-model';
import { playedPosition, type ShotToLog } from './shot-to-log';

/** A way kept to be practised, as it is kept. */
export interface DrillPosition extends SavedPosition {
  readonly drill: KeptDrill;
}

/** The same on the table in play. */
export interface LaidDrill {
  readonly position: SavedPosition;
  /** In the table's frame. */
  readonly stroke: Stroke;
  /** A direct cut as it is logged; null of any other way, and of one that there is no shot of here. */
  readonly asked: ShotToLog | null;
  /** Why there is none; null where that needs no word. */
  readonly problem: string | null;
}

/** How often whoever plays has tried, and made it. */
export interface DrillTally {
  readonly tries: number;
  readonly made: number;
}

/** Ways that were kept to be played again, and what became of that. */
export interface KeptDrills {
  readonly all: ReadonlySignal<readonly DrillPosition[]>;
  find(id: string): DrillPosition | null;
  lay(drill: DrillPosition): LaidDrill;
  /** What all balls do, the cue ball first, struck as meant; null where nobody can tell. */
  play(laid: LaidDrill): Promise<TablePlay | null>;
  tally(drill: DrillPosition): DrillTally;
  /** Logs a try of a direct cut as it was laid. */
  log(drill: DrillPosition, asked: ShotToLog, became: WhatBecame): CopyResult;
  /** Counts a try of any other way; taken back by {@link takeBack}. */
  count(drill: DrillPosition, went: boolean): CopyResult;
  takeBack(id: string): void;
}

export interface KeptDrillsPorts {
  readonly choose: Pick<ChooseModel, 'drills' | 'shape' | 'logTry' | 'takeBackTry'>;
  readonly player: Pick<PlayerModel, 'played' | 'log' | 'inPlay'>;
  readonly table: ReadonlySignal<Table>;
  readonly knowledge: ReadonlySignal<KitKnowledge>;
  /** Null where the browser cannot work beside the page. */
  readonly work: Work | null;
}

export function createKeptDrills(ports: KeptDrillsPorts): KeptDrills {
  const { choose, player, table, knowledge, work } = ports;
  const all = computed(() =>
    choose.drills.value.filter((one): one is DrillPosition => Boolean(one.drill)),
  );
  const mine = computed(() => {
    const byDrill = new Map<string, { result: string }[]>();
    for (const { drill, asMeant, result } of player.played.value) {
      if (!drill || drill.rung !== null || !asMeant) continue;
      byDrill.set(drill.id, [...(byDrill.get(drill.id) ?? []), { result }]);
    }
    return byDrill;
  });
  return {
    all,
    find: (id) => all.value.find((one) => one.id === id) ?? null,
    lay(kept) {
      const [shape, known] = [choose.shape.value, knowledge.value];
      const position = positionOnTable(kept, shape, known.kit);
      const { kind, stroke } = kept.drill;
      const goal = goalOf(position);
      if (kind !== 'direct' || goal === null) {
        const isOther = !isNear(kept.lengthM, shape.lengthM) || !isNear(kept.widthM, shape.widthM);
        const problem = isOther ? PLAYER_PROBLEMS.otherTable : null;
        return { position, stroke, asked: null, problem };
      }
      const found = shotFrom(position.balls, goal, shape, known.kit);
      if (!found.ok) {
        return { position, stroke, asked: null, problem: noShotWords(found).message };
      }
      const { distanceM, cutRad, headingRad, target, least } = found;
      const { kit, spread } = knownAlongShot(known, table.value.bedSlope, headingRad);
      const { side, height, speedMps } = stroke;
      const elevationRad = Math.max(stroke.elevationRad, least.elevationRad);
      const reach = { objectDistanceM: target.distanceM };
      const shot = { distanceM, cutRad, side, height, elevationRad, speedMps, ...reach };
      const answer = solveAim(shot, kit);
      if (!answer.ok) return { position, stroke, asked: null, problem: PLAYER_PROBLEMS.noAimHere };
      const struck = { aimRad: answer.aimRad, side, height, elevationRad, speedMps };
      const laid = { shape, balls: position.balls, goal };
      const asked = {
        shot,
        aimRad: answer.aimRad,
        target,
        kit,
        spread,
        position: playedPosition(laid, struck, headingRad),
      };
      return { position, stroke: asked.position.stroke, asked, problem: null };
    },
    async play({ position: { balls }, stroke }) {
      const [shape, { kit }] = [choose.shape.peek(), knowledge.peek()];
      return work?.('stroke', { balls, shape, kit, stroke }).catch(() => null) ?? null;
    },
    tally({ id, drill }) {
      const { id: playerId } = player.inPlay.value;
      const logged = (mine.value.get(id) ?? []).map(({ result }) => result === 'went');
      const counted = drill.tries.filter((one) => one.playerId === playerId);
      const went = [...logged, ...counted.map((one) => one.went)];
      return { tries: went.length, made: went.filter(Boolean).length };
    },
    log: ({ id }, asked, became) =>
      player.log({ ...asked, ...became, testId: null, drill: { id, rung: null } }),
    count({ id }, went) {
      const { id: playerId } = player.inPlay.peek();
      return choose.logTry(id, playerId, went) ? { ok: true, id } : NOT_THERE;
    },
    takeBack: (id) => choose.takeBackTry(id, player.inPlay.peek().id),
  };
}

/** Within a hundredth: no two sizes of table are so near each other. */
function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < 0.01 * other;
}
