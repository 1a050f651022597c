/** One figure of the bench. */
export interface BenchLine {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}
