import { batch, computed, signal } from '@preact/signals';
import { closedPockets, type WhyClosed } from '../../engine/goal/closed-pockets';
import { ballNamed } from '../../engine/lie/balls-of';
import { frozenPairs, neighboursOf } from '../../engine/lie/neighbours';
import type { BallName } from '../../engine/lie/position';
import type { RankQuestion } from '../../engine/plan/refine-way';
import type { PocketName } from '../../engine/table/pocket-shape';
import { freshId } from '../../store/fresh-id';
import { isSame } from '../../store/same-value';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import { noShotWords } from '../../words/no-shot-words';
import { crowded } from '../crowded';
import type { EditResult } from '../edit-result';
import { askedByWay } from '../log/shot-to-log';
import { knownAlongShot } from '../measure/known-along-shot';
import { shapeOf } from '../table-in-play';
import { createAllPockets } from './all-pockets';
import { createAllWays } from './all-ways/create-all-ways';
import { directShots } from './all-ways/direct-shots';
import { waysFor } from './all-ways/ways-asked';
import { askedOf, askedOfPockets, isSameShot } from './asked-of';
import { createBallEdits } from './ball-edits';
import { createBroughtWay } from './brought-way';
import type { ChooseModel } from './choose-model';
import type { ChoosePorts } from './choose-ports';
import { createChoosing } from './choosing';
import { createComparing } from './comparing';
import { createDrillEdits } from './drill-edits';
import { askedForMost } from './for-most';
import { createGoalEdits } from './goal-edits';
import { createKeptPositions } from './kept-positions';
import { createLayoutEdits } from './layout-edits';
import { wayLookedAt } from './looked-at';
import { createPositionEdits } from './position-edits';
import { positionOnTable } from './position-on-table';
import { positionShot } from './position-shot';
import { shotOfWay, shotToAsk } from './send-to-shot';
import type { WayToAsk } from './way-to-ask';
import { workAtRest } from './work-at-rest';

const NOTHING_TO_PLAY = CHOOSE_PROBLEMS.nothingToPlay;
const NONE_CLOSED: ReadonlyMap<PocketName, WhyClosed> = new Map();
const OUT_OF_DATE = CHOOSE_PROBLEMS.outOfDate;

/** Keeps the place Choose. */
export function createChooseModel(ports: ChoosePorts): ChooseModel {
  const { table, knowledge, player, work, now = Date.now, newId = freshId } = ports;
  const shape = computed(() => shapeOf(table.value));
  const kit = computed(() => knowledge.value.kit);
  const kept = createKeptPositions({ ...ports, now, newId });
  const open = computed(() => positionOnTable(kept.open.value, shape.value, kit.value));
  const edits = createLayoutEdits(kept, open, now);
  const { shot, lastShot } = positionShot(open, shape, kit, edits.isDragging);
  const given = computed(() => ({
    shape: shape.value,
    table: table.value,
    knowledge: knowledge.value,
    profile: player.profile.value,
    player: player.known.value,
  }));
  const present = computed(() =>
    shot.value?.ok ? askedOf({ position: open.value, shot: shot.value, ...given.value }) : null,
  );
  const selected = signal<BallName | null>(null);
  const tried = computed(() => {
    const { balls, goal } = open.value;
    const name = selected.value;
    if (name === null) return goal.ball;
    return name === 'cue' || ballNamed(balls, name) === null ? null : name;
  });
  /** The open position, as if the ball that pockets are told of were to be played. */
  const asTried = computed(() => {
    const { goal, ...position } = open.value;
    return { ...position, goal: { ...goal, ball: tried.value } };
  });
  const pockets = createAllPockets(
    // While a ball is under the hand, whatever came of it would be overtaken by its next move.
    computed(() =>
      edits.isDragging.value ? null : askedOfPockets({ position: asTried.value, ...given.value }),
    ),
    work,
  );
  const pocketsOfSelected = {
    ...pockets,
    isDue: () => selected.value !== null && pockets.isDue(),
  };
  const whyNot = () => {
    const none = shot.peek();
    return none === null || none.ok ? NOTHING_TO_PLAY : noShotWords(none).message;
  };
  const spreadAlong = ({ scene }: RankQuestion) =>
    knownAlongShot(knowledge.peek(), table.peek().bedSlope, scene.headingRad).spread;
  const forMost = (asked: RankQuestion) =>
    player.known.peek() && askedForMost(asked, spreadAlong(asked));
  const comparing = createComparing(present, whyNot, work, forMost);
  const choosing = createChoosing(comparing, work, (asked, { option, chance }) => {
    const some = player.known.peek()?.some;
    return some
      ? { some, asked: shotOfWay(asked, option, spreadAlong(asked)), share: chance }
      : null;
  });
  /** Whoever plays is learnt from what they log: that leaves the same shot to be logged again. */
  const toLog = computed(() => {
    const [way, asked] = [choosing.chosen.value, choosing.chosenFor.value];
    if (way === null || asked === null || !isSameShot(present.value, asked)) return null;
    return askedByWay(asked, way.option, spreadAlong(asked));
  });
  const directToAsk = computed((): WayToAsk | null => {
    const [way, asked] = [choosing.chosen.value, choosing.chosenFor.value];
    if (way === null || asked === null || toLog.value === null) return null;
    return { asked: shotToAsk(asked, way.option), of: asked.scene.goal };
  });
  const brought = createBroughtWay(kept.open);
  const all = createAllWays({
    ...ports,
    brought: brought.way,
    ...directShots(() => ({ position: open.peek(), ...given.peek() }), spreadAlong),
    present: computed(() => waysFor({ position: open.value, ...given.value }, player)),
    isShot: computed(() => shot.value?.ok === true),
    speaker: ports.speaker ?? null,
    ask: ports.shot.ask,
  });
  const lookedAt = wayLookedAt(all, choosing, toLog);
  const compare = () => {
    choosing.choose(null);
    comparing.compare();
  };
  const isChanceStale = computed(
    () => toLog.value !== null && !isSame(present.value, choosing.chosenFor.value),
  );
  const compareAtRest = () => {
    const question = present.peek();
    if (toLog.peek() === null || question === null) return compare();
    // Before all else: whoever looks at it waits for its chance alone.
    choosing.renew(question);
    comparing.compare();
  };
  const ways = { isDue: comparing.isDue, begin: compareAtRest };
  const neighbours = computed(() => {
    const name = selected.value;
    return name === null ? [] : neighboursOf(open.value.balls, name, shape.value, kit.value);
  });
  const closed = computed(() => {
    const { balls, goal } = asTried.value;
    const { ball } = goal;
    if (ball === null) return NONE_CLOSED;
    return closedPockets(balls, { ...goal, ball }, shape.value, kit.value);
  });
  const refusal = signal<string | null>(null);
  const problem = computed(() => refusal.value ?? choosing.problem.value ?? kept.problem.value);

  const tell = (result: EditResult): EditResult => {
    refusal.value = result.ok ? null : result.problem;
    return result;
  };
  const anew = (work: () => void) => {
    refusal.value = null;
    work();
  };
  /** Whatever changes which position is open clears what belongs to the one before. */
  const whileOpen = <R>(edit: () => R): R =>
    batch(() => {
      edits.endDrag();
      edits.endGesture();
      const before = kept.openId.peek();
      const result = edit();
      if (kept.openId.peek() !== before) {
        selected.value = null;
        refusal.value = null;
        choosing.choose(null);
        comparing.forget();
        all.forget();
      }
      return result;
    });
  const balls = createBallEdits({ open, shape, kit, edits });
  const positions = createPositionEdits({ kept, now, newId });

  return {
    shape,
    ...createDrillEdits({ kept, open, lookedAt, now, newId }),
    lastDeleted: kept.removed,
    crowded: computed(() => crowded(kept.all.value)),
    open,
    selected,
    neighbours,
    frozenPairs: computed(() => frozenPairs(open.value.balls, kit.value)),
    tried,
    closed,
    canUndo: edits.canUndo,
    canRedo: edits.canRedo,
    beginGesture: edits.beginGesture,
    endGesture: edits.endGesture,
    shot,
    lastShot,
    comparison: comparing.comparison,
    all,
    chosen: choosing.chosen,
    fan: choosing.fan,
    range: choosing.range,
    toLog,
    isChanceStale,
    problem,
    select(name) {
      selected.value = name;
      refusal.value = null;
    },
    ...balls,
    place: (...where) => tell(balls.place(...where)),
    putDown: (name) => tell(balls.putDown(name)),
    drag: (...where) => tell(balls.drag(...where)),
    nudge: (...by) => tell(balls.nudge(...by)),
    freeze: (name) => tell(balls.freeze(name)),
    takeOff: (name) => tell(balls.takeOff(name)),
    undo: () => anew(edits.undo),
    redo: () => anew(edits.redo),
    ...createGoalEdits(open, shape, edits),
    openPosition: (id) => whileOpen(() => tell(positions.openPosition(id))),
    add: () => whileOpen(positions.add),
    bring: (given) => brought.bring(given, (row) => whileOpen(() => positions.bring(row))),
    duplicate: (id) => whileOpen(() => tell(positions.duplicate(id))),
    rename: (id, name) => whileOpen(() => tell(positions.rename(id, name))),
    remove: (id) => whileOpen(() => tell(positions.remove(id))),
    restore: () => whileOpen(() => tell(positions.restore())),
    chances: pockets.chances,
    attend: (isLaying) => workAtRest(isLaying ? [pocketsOfSelected] : [pockets, ways], ports.later),
    compare: () => anew(compare),
    stop: comparing.stop,
    choose: choosing.choose,
    chooseCell: choosing.chooseCell,
    wayToAsk: computed(() => (all.isDirect.value ? directToAsk.value : all.toAsk.value)),
    sendToShot() {
      const way = directToAsk.peek();
      if (way !== null) ports.shot.ask(way.asked, way.of);
      else if (choosing.chosen.peek() !== null) refusal.value = OUT_OF_DATE;
      return way !== null;
    },
    async flush() {
      edits.endDrag();
      await kept.flush();
    },
  };
}
