/** Why a file is not brought in. */
export const BACKUP_PROBLEMS = {
  changedMeanwhile: 'What is kept here has changed meanwhile: look again.',
  tooLarge: 'This file is too large to be a Leeway backup.',
  unreadable: 'This file cannot be read from where it lies: copy it to this device first.',
} as const;
