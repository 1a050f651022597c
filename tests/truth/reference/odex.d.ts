// The package ships its TypeScript sources, which our stricter settings do not pass; this is what
// we use of them. Reached through `paths` in tests/tsconfig.json.

/** Extrapolation (Gragg, Bulirsch, Stoer) after ODEX of Hairer and Wanner. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  initialStepSize: number;
  maxSteps: number;
  maxExtrapolationColumns: number;
  denseOutput: boolean;
  denseComponents: number[];

  /** Integrates from `x` to `xEnd`; the observer is called after every step, and first at `x`. */
  solve<Y extends number[]>(
    derivative: (x: number, y: Y) => Y,
    x: number,
    y: Y,
    xEnd: number,
    observer?: (
      step: number,
      xOld: number,
      x: number,
      y: Y,
      /** Component at an instant of this step; not there at the first call. */
      dense?: (component: number, x: number) => number,
    ) => boolean | undefined,
  ): { readonly y: Y; readonly outcome: number; readonly nEval: number };
}
