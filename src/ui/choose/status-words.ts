import type { ChooseModel } from '../../state/choose/choose-model';
import type { Preferences } from '../../store/records';
import { noShotWords } from '../../words/no-shot-words';
import { wantedWords } from './all-ways/kind-words';
import { besideWords } from './beside-words';
import type { ChooseMode } from './choose-mode';
import { goalWords, hindranceLines, lieWords } from './shot-words';
import { acrossWords, ballLabel, capitalised, spotWords } from './table-words';

/** One line under the table. */
export interface Status {
  readonly text: string;
  readonly isProblem: boolean;
}

/** What went wrong, or what there is and what to do next. */
export function statusOf(
  choose: ChooseModel,
  mode: ChooseMode,
  preferences: Pick<Preferences, 'distanceUnit' | 'lengthUnit'>,
): Status {
  const isAll = mode === 'ways' && !choose.all.isDirect.value;
  const problem = choose.problem.value ?? (isAll ? null : noShotMessage(choose, mode));
  if (problem !== null) return { text: problem, isProblem: true };
  if (isAll) return { text: `${wantedWords(choose.open.value)}.`, isProblem: false };
  const text =
    mode === 'balls'
      ? ballStatus(choose, preferences)
      : mode === 'zone'
        ? zoneStatus(choose, preferences)
        : shotStatus(choose, mode, preferences);
  return { text, isProblem: false };
}

function noShotMessage({ shot }: ChooseModel, mode: ChooseMode): string | null {
  const now = shot.value;
  return mode === 'balls' || mode === 'zone' || now === null || now.ok
    ? null
    : noShotWords(now).message;
}

function ballStatus(
  { selected, open, shape, neighbours }: ChooseModel,
  { lengthUnit }: Pick<Preferences, 'lengthUnit'>,
): string {
  const name = selected.value;
  if (name === null) return 'Pick a ball below, then tap the table.';
  const ball = open.value.balls.find((one) => one.name === name);
  if (!ball) return `Tap the table to put the ${ballLabel(name)} down.`;
  const beside = besideWords(neighbours.value, lengthUnit);
  const spot = spotWords(ball, shape.value);
  return `${capitalised(ballLabel(name))}: ${beside === '' ? spot : `${beside}; ${spot}`}.`;
}

function zoneStatus(
  { open, shape }: ChooseModel,
  { distanceUnit }: Pick<Preferences, 'distanceUnit'>,
): string {
  const { zone } = open.value;
  if (!zone) return 'Tap where the cue ball should come to rest.';
  return `Zone: ${spotWords(zone, shape.value)}, ${acrossWords(zone, distanceUnit, shape.value)}.`;
}

const TAP_A_BALL = 'Tap the ball to play: each pocket then says how it goes.';

function shotStatus(
  { open, shot, shape }: ChooseModel,
  mode: ChooseMode,
  preferences: Pick<Preferences, 'distanceUnit'>,
): string {
  const { goal } = open.value;
  const now = shot.value;
  if (mode === 'play' && goal.ball === null && goal.pocket === null) return TAP_A_BALL;
  if (!now?.ok) return `${goalWords(goal)}.`.replace('?.', '?');
  const lie = lieWords(now, preferences, shape.value.lengthM);
  // Play tells all of them in a list of their own.
  const [first] = mode === 'ways' ? hindranceLines(now, goal.ball) : [];
  return `${goalWords(goal)}: ${lie}.${first ? ` ▲ ${first}` : ''}`;
}
