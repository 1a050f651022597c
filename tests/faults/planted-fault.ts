/** A fault put into a copy of the project on purpose, to see that a test finds it. */
export interface PlantedFault {
  /** What would go wrong, and for whom. */
  readonly why: string;
  readonly file: string;
  /** Stands in the file exactly once. */
  readonly find: string;
  readonly replace: string;
  /** Test files, or `npm run` scripts by name, that are expected to find it; one is enough. */
  readonly catchers: readonly string[];
}
