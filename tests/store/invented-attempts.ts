import type { Attempt } from '../../src/store/attempt';

/** An invented shot of the curve trial, read twice and with a third figure half typed. */
export const CURVE_ATTEMPT: Attempt = {
  id: 'attempt-curve',
  startedAtMs: 1_790_000_000_000,
  modelVersion: 1,
  choice: {
    cues: 'demo-cue-house',
    cloths: 'demo-cloth-club',
    balls: 'demo-balls-clean',
    tables: 'demo-table-9ft',
  },
  shot: {
    trial: 'curve',
    stroke: {
      headingRad: 0,
      side: 0.4,
      height: 0,
      elevationRad: 0.1,
      speedMps: 1.5,
      speedWord: 'soft',
    },
    setup: { distanceM: 1.8, gapM: 0, cutRad: 0, bedLengthM: 2.54 },
  },
  readings: { timeS: 1.42, landingM: -0.031 },
  butt: { buttHeightM: 0.2, cueLengthM: 1.47 },
  stepsDone: ['elevation', 'timeS', 'landingM'],
  typed: { step: 'landingM', text: '31' },
  isStruckOut: false,
};

/** The same shot a minute later, under another id, with nothing read yet. */
export const LATER_ATTEMPT: Attempt = {
  ...CURVE_ATTEMPT,
  id: 'attempt-later',
  startedAtMs: CURVE_ATTEMPT.startedAtMs + 60_000,
  readings: {},
  butt: null,
  stepsDone: [],
  typed: null,
};
