/** What a record of a list cannot be called. */
export const LIST_PROBLEMS = {
  noName: 'Give it a name.',
  longName: (most: number) => `A name has ${most} characters at most.`,
  longText: (most: number) => `Say it in ${most} characters at most.`,
} as const;
