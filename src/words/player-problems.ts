/** What cannot be done with players and their shots. */
export const PLAYER_PROBLEMS = {
  notThere: 'This one is no longer here.',
  lastPlayer: 'This is the only player: make another before deleting this one.',
  nothingRemoved: 'There is nothing to put back.',
  noWorkers: 'This browser cannot work beside the page: nothing is learnt here.',
  noTestShot: 'The shots of the test could not be worked out just now.',
  noDrill: 'There is no shot to practise here just now.',
  noAimHere: 'With this kit there is no aim for it.',
  otherTable: 'It was kept on a table of another size: here the line to point along is another.',
  notLearnt: 'What the shots tell could not be worked out just now.',
} as const;
