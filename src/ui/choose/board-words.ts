import type { NamedBall } from '../../engine/lie/position';
import { isSafety } from '../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../state/choose/choose-model';
import type { DistanceUnit } from '../../units/unit-names';
import { playWords } from './all-ways/kind-words';
import { STOPS_LEAD, stopLines } from './all-ways/safety-stops';
import { FAN_LEAD, fanLine } from './fan-words';
import type { PocketsTold } from './pockets-told';
import { goalWords, hindranceLines } from './shot-words';
import {
  acrossWords,
  ballLabel,
  ballWords,
  capitalised,
  pocketWords,
  spotWords,
} from './table-words';
import { wayName } from './way-words';

/** What the drawing shows, in words: balls, pockets, what is played and in the way, zone and fan. */
export function boardWords(
  choose: ChooseModel,
  unit: DistanceUnit,
  told: PocketsTold,
  isAll = false,
): string {
  return [
    'Table from above',
    ...ballLines(choose),
    ...frozenLines(choose),
    ...goalLines(choose),
    ...pocketLines(told),
    ...zoneLines(choose, unit),
    ...(isAll ? allLines(choose) : fanLines(choose)),
  ].join('. ');
}

function ballLines({ open, shape }: ChooseModel): readonly string[] {
  const { balls } = open.value;
  if (balls.length === 0) return ['No balls on it yet'];
  return [...balls]
    .sort((a, b) => order(a) - order(b))
    .map((ball) => `${capitalised(ballLabel(ball.name))} ${spotWords(ball, shape.value)}`);
}

function frozenLines({ frozenPairs }: ChooseModel): readonly string[] {
  return frozenPairs.value.map(
    ([one, other]) => `${capitalised(ballWords(one))} is frozen to ${ballWords(other)}`,
  );
}

function order({ name }: NamedBall): number {
  return name === 'cue' ? 0 : name;
}

function goalLines({ open, shot }: ChooseModel): readonly string[] {
  const { goal } = open.value;
  const now = shot.value;
  if (goal.ball === null && goal.pocket === null) return [];
  return [goalWords(goal), ...(now?.ok ? hindranceLines(now, goal.ball) : [])];
}

function pocketLines(told: PocketsTold): readonly string[] {
  return [...told].map(([name, { words }]) => `${capitalised(pocketWords(name))} pocket ${words}`);
}

function zoneLines({ open, shape }: ChooseModel, unit: DistanceUnit): readonly string[] {
  const { zone } = open.value;
  if (zone === null) return [];
  const across = acrossWords(zone, unit, shape.value);
  return [`Zone for the cue ball ${spotWords(zone, shape.value)}, ${across}`];
}

function fanLines({ chosen, fan, shape }: ChooseModel): readonly string[] {
  const way = chosen.value;
  if (way === null) return [];
  const lines = fan.value.map((play) => fanLine(play, shape.value));
  return [capitalised(wayName(way)), `${FAN_LEAD}: ${lines.join('; ')}`];
}

/** Of the way of any kind that is looked at. */
function allLines({ all, open, shape }: ChooseModel): readonly string[] {
  const way = all.chosen.value;
  if (way === null) return [];
  const name = playWords(way.told);
  if (isSafety(way)) {
    const stops = stopLines(way, open.value.balls, shape.value);
    return [name, `${STOPS_LEAD}: ${stops.join('; ')}`];
  }
  const lines = way.fan.map((play) => fanLine(play, shape.value));
  return [name, `${FAN_LEAD}: ${lines.join('; ')}`];
}
