import { DEFAULT_KIT, type Kit } from '../../../src/engine/kit/kit';
import type { Body } from '../reference/body';
import { speedOf } from './figure-cases';
import type { FigureTable } from './published-figure';

/**
 * The snooker table that was measured: ball and cloth (second-hand), nose at 7/5 of the radius (from
 * memory), restitution and friction of the same authors' model, Proc. IMechE C 224(9):1863 (2010).
 */
export const MEASURED_TABLE: Kit = {
  ...DEFAULT_KIT,
  ballRadiusM: 0.02625,
  slideFriction: 0.212,
  cushion: { ...DEFAULT_KIT.cushion, restitution: 0.98, friction: 0.14, noseHeight: 1.4 },
};

/**
 * Speed off the cushion against speed into it, m/s, of balls that rolled in at 0.28-3.5 m/s. A line
 * quoted beside it, 0.818 v, is below it by a tenth at 2 m/s: it is the shape that can be trusted.
 */
export const measuredRebound = (speedMps: number): number =>
  -0.0877 * speedMps ** 2 + 1.131 * speedMps - 0.0953;

/** A ball of that table that rolls straight at a cushion. */
export function rollsIn(speedMps: number): Body {
  const spin = [-speedMps / MEASURED_TABLE.ballRadiusM, 0, 0] as const;
  return { at: [0, 0, 0], velocity: [0, speedMps, 0], spin };
}

/** What a cushion does to a ball. */
export const CUSHION_FIGURES: readonly FigureTable[] = [
  {
    law: 'speed just after a square cushion, of a ball that rolls in',
    source:
      '−0.0877 v² + 1.131 v − 0.0953, measured on a snooker table, Mathavan, Jackson and Parkin (2009)',
    tag: 'second-hand',
    unit: 'm/s',
    figures: [0.5, 1, 1.5, 2, 2.5, 3, 3.5].map((speedMps) => ({
      name: `in at ${speedMps} m/s`,
      expected: measuredRebound(speedMps),
      tolerance: 0.05,
      of: (subject) => speedOf(subject.rebound(rollsIn(speedMps), MEASURED_TABLE)),
    })),
  },
];
