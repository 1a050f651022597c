import type { NoShot } from '../engine/goal/position-shot';
import type { BallName } from '../engine/lie/position';
import { MOST_BALLS } from '../engine/table/most-balls';
import type { TableRefusal } from '../engine/table/table-play';
import { refusalWords, type Wording } from './refusal-words';

const LAY_APART = 'Lay the balls at least a ball’s width apart.';
const LAY_FREE = 'Lay every ball on the bed, clear of cushions and holes.';

/** Why a position makes no shot, and what would help. */
export function noShotWords({ reason, ball = 'cue' }: NoShot): Wording {
  switch (reason) {
    case 'no-cue-ball':
      return {
        message: 'There is no cue ball on the table.',
        remedy: 'Give a ball named "cue".',
      };
    case 'no-such-ball':
      return {
        message: `There is no ball ${ball} on the table.`,
        remedy: 'Play a ball that is on the table.',
      };
    case 'overlap':
      return { message: `${called(ball)} lies in the place of another.`, remedy: LAY_APART };
    case 'off-bed':
      return { message: `${called(ball)} does not lie free on the bed.`, remedy: LAY_FREE };
    case 'too-thin':
      return {
        message: 'The cut is over 87°: no direct shot sends it that way.',
        remedy: 'Choose another ball or pocket, or lay the cue ball elsewhere.',
      };
    case 'pocket-closed':
      return {
        message: 'From there the ball does not go past the points of that pocket.',
        remedy: 'Choose another pocket.',
      };
  }
}

function called(ball: BallName): string {
  return ball === 'cue' ? 'The cue ball' : `Ball ${ball}`;
}

/** Why a stroke cannot be played on a table, and what would help. */
export function tableRefusalWords({ reason, quantity, ball }: TableRefusal): Wording {
  switch (reason) {
    case 'out-of-range':
      return {
        message: `${quantity} is out of range.`,
        remedy: 'Give a value that the engine takes.',
      };
    case 'beyond-miscue-limit':
      return {
        message: 'The tip would slip off the ball.',
        remedy: refusalWords({ ok: false, reason: 'beyond-miscue-limit' }).remedy,
      };
    case 'never-stops':
      return {
        message: 'On this bed a ball would roll for ever.',
        remedy: refusalWords({ ok: false, reason: 'never-stops' }).remedy,
      };
    case 'no-balls':
      return {
        message: `There must be from 1 to ${MOST_BALLS} balls.`,
        remedy: 'Give fewer balls, the cue ball among them.',
      };
    case 'off-bed':
      return { message: `Ball ${ball} does not lie free on the bed.`, remedy: LAY_FREE };
    case 'overlap':
      return { message: `Ball ${ball} lies in the place of another.`, remedy: LAY_APART };
  }
}
