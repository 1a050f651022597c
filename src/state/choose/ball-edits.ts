import type { ReadonlySignal } from '@preact/signals';
import type { Kit } from '../../engine/kit/kit';
import { ballNamed, without } from '../../engine/lie/balls-of';
import { frozen } from '../../engine/lie/freeze';
import { legalPlace, type Place } from '../../engine/lie/legal-place';
import { FROZEN_M } from '../../engine/lie/neighbours';
import type { BallName, Position } from '../../engine/lie/position';
import { snapped } from '../../engine/lie/snap';
import type { TableShape } from '../../engine/table/table-shape';
import type { SavedPosition } from '../../store/saved-position';
import { CHOOSE_PROBLEMS } from '../../words/choose-problems';
import { type EditResult, NOT_THERE } from '../edit-result';
import type { ChooseModel } from './choose-model';
import type { LayoutEdits } from './layout-edits';

/** Every way to move a ball. */
export type BallEdits = Pick<
  ChooseModel,
  | 'place'
  | 'putDown'
  | 'drag'
  | 'endDrag'
  | 'cancelDrag'
  | 'nudge'
  | 'freeze'
  | 'takeOff'
  | 'ballAt'
>;

export interface BallEditsPorts {
  /** As it lies on the table in play. */
  readonly open: ReadonlySignal<SavedPosition>;
  readonly shape: ReadonlySignal<TableShape>;
  readonly kit: ReadonlySignal<Kit>;
  readonly edits: LayoutEdits;
}

const OK = { ok: true } as const;
const NO_ROOM = { ok: false, problem: CHOOSE_PROBLEMS.noRoom } as const;
const NOTHING_NEAR = { ok: false, problem: CHOOSE_PROBLEMS.nothingNear } as const;

/** As near as this to a crossing of two diamonds' lines, a ball snaps to it, m (our choice). */
const SNAP_M = 0.04;

export function createBallEdits({ open, shape, kit, edits }: BallEditsPorts): BallEdits {
  const balls = () => open.peek().balls;
  const found = (name: BallName, wanted: Place) =>
    legalPlace(balls(), name, withinNoses(wanted, shape.peek()), shape.peek(), kit.peek());
  const within = (name: BallName, place: Place) => ballWithin(balls(), name, place, kit.peek());
  const put = (name: BallName, place: Place | null, how: 'change' | 'drag'): EditResult => {
    if (place === null) return NO_ROOM;
    edits[how]({ balls: withBall(balls(), name, place) });
    return OK;
  };
  const onLaid = (name: BallName, edit: (ball: Place) => EditResult): EditResult => {
    const ball = ballNamed(balls(), name);
    return ball === null ? NOT_THERE : edit(ball);
  };

  return {
    place(name, xM, yM, isSnapping) {
      const wanted = withinNoses({ xM, yM }, shape.peek());
      const near = isSnapping ? snapped(wanted, shape.peek(), SNAP_M) : wanted;
      const place = within(name, near) === null ? near : wanted;
      const other = within(name, place);
      if (other !== null) return refused(CHOOSE_PROBLEMS.inTheWayUnlessFrozen(other));
      return put(name, found(name, place), 'change');
    },
    putDown: (name) => put(name, found(name, { xM: 0, yM: 0 }), 'change'),
    drag: (name, xM, yM) => put(name, found(name, { xM, yM }), 'drag'),
    endDrag: edits.endDrag,
    cancelDrag: edits.cancelDrag,
    nudge: (name, rightM, upM) =>
      onLaid(name, ({ xM, yM }) => {
        const wanted = { xM: xM + rightM, yM: yM + upM };
        const other = within(name, wanted);
        const place = found(name, wanted);
        if (other === null || place === null) return put(name, place, 'change');
        put(name, place, 'change');
        const cameM2 = (place.xM - xM) * rightM + (place.yM - yM) * upM;
        const wasStopped = 2 * cameM2 < rightM * rightM + upM * upM;
        return wasStopped ? refused(CHOOSE_PROBLEMS.inTheWay(other)) : OK;
      }),
    freeze: (name) =>
      onLaid(name, () => {
        const place = frozen(balls(), name, shape.peek(), kit.peek());
        return place === null ? NOTHING_NEAR : put(name, place, 'change');
      }),
    takeOff: (name) =>
      onLaid(name, () => {
        const { goal } = open.peek();
        const ball = goal.ball === name ? null : goal.ball;
        edits.change({ balls: without(balls(), name), goal: { ...goal, ball } });
        return OK;
      }),
    ballAt: (name) => ballNamed(open.value.balls, name),
  };
}

/** The ball in which another one would lie at a place; one merely touched is none. */
function ballWithin(
  balls: Position,
  name: BallName,
  { xM, yM }: Place,
  { ballRadiusM }: Kit,
): BallName | null {
  const leastM = 2 * ballRadiusM - FROZEN_M;
  const inside = without(balls, name).find(
    (other) => Math.hypot(other.xM - xM, other.yM - yM) < leastM,
  );
  return inside?.name ?? null;
}

function refused(problem: string): EditResult {
  return { ok: false, problem };
}

/** In its place in the list, or the last. */
function withBall(balls: Position, name: BallName, { xM, yM }: Place): Position {
  const ball = { name, xM, yM };
  return ballNamed(balls, name) === null
    ? [...balls, ball]
    : balls.map((one) => (one.name === name ? ball : one));
}

/** What is meant far off the table is meant at its edge, not behind a pocket. */
function withinNoses({ xM, yM }: Place, { widthM, lengthM }: TableShape): Place {
  const held = (atM: number, spanM: number) => Math.min(spanM / 2, Math.max(-spanM / 2, atM));
  return { xM: held(xM, widthM), yM: held(yM, lengthM) };
}
