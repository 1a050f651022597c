/** What cannot be had on Shot. */
export const SHOT_PROBLEMS = {
  roomNotWorkedOut: 'The room for error could not be worked out just now.',
  outside: 'That is outside what can be played.',
} as const;
