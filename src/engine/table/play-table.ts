import { restingAt } from '../ball/ball-state';
import { strike } from '../impacts/strike';
import type { Kit } from '../kit/kit';
import type { Stroke } from '../stroke/stroke';
import { answerMeeting } from './answer-meeting';
import { answerOwn } from './answer-own';
import { checkTable } from './check-table';
import { type Field, newField } from './field';
import { foresee } from './foresee';
import { restingMover, setOff } from './mover';
import { outcomeOf } from './outcome';
import type { PlacedBall, TableEvent, TablePlay, TableRefusal } from './table-play';
import type { TableShape } from './table-shape';

export interface TableOptions {
  /** How many events to follow at most. */
  readonly mostEvents?: number;
  /** Whether only what becomes of the balls is asked: then no phases are told. */
  readonly endsOnly?: boolean;
  /** Told each event in turn; the play breaks off after one for which it is true. */
  readonly until?: (event: TableEvent) => boolean;
}

/**
 * A stroke into fifteen balls takes some hundred, but where spin presses a cluster together ten
 * thousand: four times what any of thousands of random strokes took.
 */
const MOST_EVENTS = 100_000;

/**
 * Plays a stroke at the first of the balls until all lie still.
 *
 * Every ball moves in closed forms from event to event; the next event of all is found and
 * answered, and only what moves is looked at again. Balls that meet at the same moment do so one
 * pair after the other, lower numbers first, each by the law of two: a row of touching balls passes a
 * blow on, and a ball that hits two at once hits the lower number first.
 *
 * @param stroke its aim is measured from y, right +
 */
export function playTable(
  balls: readonly PlacedBall[],
  stroke: Stroke,
  kit: Kit,
  shape: TableShape,
  options: TableOptions = {},
): TablePlay | TableRefusal {
  const { mostEvents = MOST_EVENTS, endsOnly = false, until } = options;
  const refusal = checkTable(balls, stroke, kit, shape);
  if (refusal !== null) return refusal;
  const movers = balls.map(({ xM, yM }, number) =>
    restingMover(number, restingAt(xM, yM), !endsOnly),
  );
  const field = newField(movers, kit, shape);
  const cueBall = movers[0];
  if (cueBall !== undefined) {
    const { xM, yM } = cueBall.state;
    setOff(cueBall, { ...strike(stroke, kit), xM, yM }, 0, kit);
    foresee(field, cueBall, 0);
  }
  const { endS, complete } = playOut(field, mostEvents, until);
  return {
    ok: true,
    balls: balls.map((from, number) => runOf(field, from, number, endS, shape)),
    events: field.events,
    endS,
    complete,
  };
}

function playOut(field: Field, mostEvents: number, until: TableOptions['until']) {
  let endS = 0;
  let told = 0;
  for (let count = 0; count < mostEvents; count++) {
    const timeS = playNext(field);
    if (timeS === null) return { endS, complete: true };
    endS = timeS;
    for (; until !== undefined && told < field.events.length; told++) {
      const event = field.events[told];
      if (event !== undefined && until(event)) return { endS, complete: false };
    }
  }
  return { endS, complete: false };
}

/** Plays what comes next of all, and tells when that was, s; null: nothing moves any more. */
function playNext(field: Field): number | null {
  const { movers, meetS, nextMet, own } = field;
  const count = movers.length;
  let soonestS = Number.POSITIVE_INFINITY;
  let first = -1;
  let second = -1;
  for (let i = 0; i + 1 < count; i++) {
    const j = nextMet[i] ?? count;
    const timeS = meetS[i * count + j] ?? Number.POSITIVE_INFINITY;
    if (timeS < soonestS) {
      soonestS = timeS;
      first = i;
      second = j;
    }
  }
  for (let i = 0; i < count; i++) {
    const timeS = own[i]?.timeS ?? Number.POSITIVE_INFINITY;
    if (timeS < soonestS) {
      soonestS = timeS;
      first = i;
      second = -1;
    }
  }
  const one = movers[first];
  const event = own[first];
  if (one === undefined || event === undefined) return null;
  const other = second < 0 ? undefined : movers[second];
  if (other === undefined) answerOwn(field, one, event);
  else answerMeeting(field, one, other, soonestS);
  return soonestS;
}

function runOf(field: Field, from: PlacedBall, number: number, endS: number, shape: TableShape) {
  const mover = field.movers[number];
  if (mover === undefined) throw new RangeError(`there is no ball ${number}`);
  const outcome = outcomeOf(mover, endS, shape, field.kit);
  const { past, phase } = mover;
  const phases = past === null ? [] : phase === null ? past : [...past, phase];
  return { from, phases, outcome };
}
