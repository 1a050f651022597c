import type { BallName } from '../engine/lie/position';

/** What cannot be done on Choose. */
export const CHOOSE_PROBLEMS = {
  notPlayed: 'How it plays out could not be worked out just now: choose it again.',
  noRoom: 'There is no room for it.',
  nothingNear: 'There is nothing it could be frozen to.',
  nothingToPlay: 'Choose a ball and a pocket first.',
  noOtherBall: 'There is only the cue ball on the table: lay a ball to play.',
  outOfDate: 'Something has changed since these ways were compared: compare again.',
  notHere: 'That way cannot be laid here: what it needs is not on this table.',
  nothingRemoved: 'There is nothing to put back.',
  noWorkers: 'This browser cannot work beside the page: ways cannot be compared here.',
  failed: 'The comparison stopped halfway: try again.',
  inTheWay: (ball: BallName) => `${called(ball)} is in the way.`,
  inTheWayUnlessFrozen: (ball: BallName) => `${called(ball)} is in the way: Freeze to touch it.`,
} as const;

function called(ball: BallName): string {
  return `The ${ball === 'cue' ? 'cue ball' : ball}`;
}
