/** What cannot be done on Kit. */
export const KIT_PROBLEMS = {
  nothingDeleted: 'There is nothing to put back.',
  noSuchNumber: 'There is no such number here.',
  notThere: 'This one is no longer here.',
  noChangeSaid: 'Say what was changed.',
  nothingChanged: 'Nothing of it was changed.',
  likeItself: 'It is like itself already.',
} as const;
