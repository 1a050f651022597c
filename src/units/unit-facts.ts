/** What plus and minus are called, in place of a sign. */
export interface SideWords {
  readonly plus: string;
  readonly minus: string;
}

/** What a control or a label needs to know about one unit. */
export interface UnitFacts {
  /** As written after a number. */
  readonly symbol: string;
  /** As written after exactly one; left out where the symbol does not change. */
  readonly symbolOfOne?: string;
  /** In full, for settings and screen readers. */
  readonly name: string;
  /** False where the symbol touches the number, as a degree sign does. */
  readonly spaced: boolean;
  /** Smallest nudge, in this unit. */
  readonly fineStep: number;
  /** Long nudge, in this unit. */
  readonly coarseStep: number;
  /** Decimals shown at most. */
  readonly decimals: number;
  /** Decimals shown even when they are zero. */
  readonly leastDecimals: number;
  /** Whether whole eighths are written as ½, ¼, ⅜… */
  readonly eighths: boolean;
  /** Words for plus and minus, where a figure has a side and is written without a sign. */
  readonly sides?: SideWords;
}
