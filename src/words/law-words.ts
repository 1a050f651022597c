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
    what: 'Cushions now give back less of a hard shot.',
    moved: 'Where balls rest or fall may have moved.',
    movedByReadings: 'Where balls rest or fall, and with your readings aims too, may have moved.',
  },
  3: {
    what: 'Chances are now told for players of your own, learnt from what they play.',
    moved: 'Yours begins about where the invented one stood, so chances may have moved.',
    movedByReadings:
      'Yours begins about where the invented one stood, so chances and aims may have moved.',
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
