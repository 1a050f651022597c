/** What changed with a version of the engine's laws, and what of it a player meets. */
interface LawChange {
  readonly what: string;
  /** What may have moved of what was shown before, where nothing was read off a table. */
  readonly moved: string;
  /** The same, where something was. */
  readonly movedByReadings: string;
}

/** By version, from the second. */
const LAW_CHANGES: Readonly<Record<number, LawChange>> = {
  2: {
    what: 'Cushions now give back less of a hard shot, as measured ones do.',
    moved: 'Where a ball rests after a cushion may have moved; no aim has.',
    movedByReadings:
      'Where a ball rests after a cushion may have moved; and as your readings were fitted anew, an aim may have, a little.',
  },
};

/** What is said once of the laws that changed since a version; empty where none did. */
export function lawWords(since: number, hasReadings: boolean): string {
  return Object.entries(LAW_CHANGES)
    .filter(([version]) => Number(version) > since)
    .map(
      ([, { what, moved, movedByReadings }]) => `${what} ${hasReadings ? movedByReadings : moved}`,
    )
    .join(' ');
}
