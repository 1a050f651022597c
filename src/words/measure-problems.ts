/** What cannot be done, entered or worked out on Measure. */
export const MEASURE_PROBLEMS = {
  allDone: 'All of it is done.',
  notAPress: 'This step asks for a number.',
  nothingDone: 'Nothing is done yet.',
  nothingRemoved: 'There is nothing to put back.',
  noWorkers: 'This browser cannot work beside the page: readings are kept, but not what they tell.',
  notWorkedOut: 'What the readings tell could not be worked out just now.',
  nothingToEnter: 'There is nothing to enter here.',
  tooSteep: 'That would raise the cue beyond 45°: look again.',
  tooLow: 'That is lower than the tip: look again.',
  tooMuch: 'That is too much to be right: look again.',
  tooLittle: 'That is too little to be right: look again.',
  notANumber: 'That is not a number.',
} as const;
