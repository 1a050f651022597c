/** What cannot be done with players and their shots. */
export const PLAYER_PROBLEMS = {
  notThere: 'This one is no longer here.',
  lastPlayer: 'This is the only player: make another before deleting this one.',
  nothingRemoved: 'There is nothing to put back.',
  noWorkers: 'This browser cannot work beside the page: nothing is learnt here.',
  noTestShot: 'The shots of the test could not be worked out just now.',
  notLearnt: 'What the shots tell could not be worked out just now.',
} as const;
