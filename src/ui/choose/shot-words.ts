import type { InTheWay, PositionShot } from '../../engine/goal/position-shot';
import type { Preferences } from '../../store/records';
import type { GoalDraft } from '../../store/saved-position';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { DISTANCE_UNITS, distanceInUnit } from '../../units/distance-unit';
import { formatQuantity } from '../../units/format-number';
import { ballWords, capitalised, pocketWords } from './table-words';

/** A cue this much above level needs telling, rad. */
const TOLD_RAISED_RAD = 0.08;

/** What is to be played: "The 3 into the far right pocket"; what is not chosen yet is asked for. */
export function goalWords({ ball, pocket }: GoalDraft): string {
  if (ball === null && pocket === null) return 'No ball and pocket chosen yet';
  if (ball === null) return `Into the ${pocket && pocketWords(pocket)} pocket: which ball?`;
  if (pocket === null) return `The ${ball}: into which pocket?`;
  return `The ${ball} into the ${pocketWords(pocket)} pocket`;
}

/** How it lies: "cut 31° → right, 0.84 m to the ghost ball". */
export function lieWords(
  { cutRad, distanceM }: Pick<PositionShot, 'cutRad' | 'distanceM'>,
  { distanceUnit }: Pick<Preferences, 'distanceUnit'>,
  tableLengthM: number,
): string {
  const distance = distanceInUnit(distanceM, distanceUnit, tableLengthM);
  return `${cutWords(cutRad)}, ${formatQuantity(distance, DISTANCE_UNITS[distanceUnit])} to the ghost ball`;
}

/** "cut 31° → right", "straight". */
export function cutWords(cutRad: number): string {
  const size = `${Math.abs(Math.round(degreesOf(cutRad)))}°`;
  if (size === '0°') return 'straight';
  return `cut ${size} ${cutRad > 0 ? '→ right' : '← left'}`;
}

/** What stands against it, a line each, what is in the way first. */
export function hindranceLines(shot: PositionShot, ball: number | null): readonly string[] {
  return [
    ...shot.inTheWay.map((one) => inTheWayWords(one, ball)),
    ...leastLines(shot),
    ...bridgeLines(shot),
  ];
}

function inTheWayWords({ mover, what }: InTheWay, ball: number | null): string {
  const whose = mover === 'object' && ball !== null ? ballWords(ball) : 'the cue ball';
  const thing = what === 'jaw' ? 'the point of the pocket' : ballWords(what);
  return `${capitalised(thing)} is in the way of ${whose}.`;
}

function leastLines({ least: { elevationRad, over } }: PositionShot): readonly string[] {
  if (over === 'nothing' || elevationRad < TOLD_RAISED_RAD) return [];
  const thing = over === 'cushion' ? 'the cushion' : ballWords(over);
  return [`Cue raised ${formatQuantity(degreesOf(elevationRad), DEGREES)} or more, over ${thing}.`];
}

function bridgeLines({ bridge }: PositionShot): readonly string[] {
  if (bridge === 'nowhere') return ['There is no room for a bridge hand.'];
  return bridge === 'over-a-ball' ? ['The bridge hand goes over a ball.'] : [];
}
