import { KIT_QUANTITIES, type KitQuantity } from '../kit/kit-spread';
import { cholesky, choleskyInverse } from '../numerics/cholesky';
import { dot } from '../numerics/dot';
import type { Fit, FittedShot } from './fit-kit';
import type { Unknown } from './fit-layout';
import { changePerUnknown } from './fit-problem';
import { readingCovariance, type ShotEvidence } from './shot-evidence';

/** What about a stroke may be mistaken for a quantity of the kit. */
export const STRAY_NAMES = ['direction', 'side', 'height', 'elevation', 'speed'] as const;
export type StrayName = (typeof STRAY_NAMES)[number];

/** Something the readings cannot tell apart, worth a word to the player. */
export type Advice =
  | {
      readonly kind: 'pull-together';
      readonly one: Unknown;
      readonly two: Unknown;
      readonly correlation: number;
    }
  | {
      readonly kind: 'hangs-on-stroke';
      readonly quantity: Unknown;
      readonly stray: StrayName;
      /** Its standard deviation would be this share of what it is, were that known exactly. */
      readonly sdShare: number;
    };

/** Stands for none of the strays. */
const NO_STRAY = -1;
/** Two quantities are told apart badly from here on: readings alone can tie them, priors do not. */
const TOGETHER = 0.8;
/** A quantity hangs on a stray that makes up this much of its standard deviation or more. */
const SD_SHARE = 0.7;
/** A quantity that is known no better than this share of its prior is not worth advice yet. */
const TAUGHT = 0.8;

/**
 * What the readings taken so far cannot tell apart: two quantities of the kit, or one of them and
 * how the strokes strayed.
 */
export function adviceOf(fit: Fit): readonly Advice[] {
  const ofKit = fit.layout.unknowns.flatMap((unknown, index) =>
    isOfKit(unknown) ? [{ unknown, index }] : [],
  );
  const taught = ofKit.filter(({ index }) => deviation(fit.covariance, index) < TAUGHT);
  const pairs = ofKit.flatMap(({ unknown: one, index: i }, at) =>
    ofKit.slice(at + 1).flatMap<Advice>(({ unknown: two, index: j }) => {
      const correlation = correlationOf(fit, i, j);
      return Math.abs(correlation) < TOGETHER
        ? []
        : [{ kind: 'pull-together', one, two, correlation }];
    }),
  );
  const asItIs = covarianceWithout(fit, NO_STRAY);
  const hanging = STRAY_NAMES.flatMap((stray, at) => {
    const covariance = covarianceWithout(fit, at);
    if (covariance === null || asItIs === null) return [];
    return taught.flatMap<Advice>(({ unknown: quantity, index }) => {
      const sdShare = deviation(covariance, index) / deviation(asItIs, index);
      return sdShare > SD_SHARE ? [] : [{ kind: 'hangs-on-stroke', quantity, stray, sdShare }];
    });
  });
  return [...pairs, ...hanging];
}

function isOfKit({ quantity }: Unknown): boolean {
  return KIT_QUANTITIES.includes(quantity as KitQuantity);
}

function deviation(covariance: readonly (readonly number[])[], index: number): number {
  return Math.sqrt(covariance[index]?.[index] ?? 1);
}

function correlationOf({ covariance }: Fit, i: number, j: number): number {
  return (covariance[i]?.[j] ?? 0) / (deviation(covariance, i) * deviation(covariance, j));
}

/** The covariance that would be left, were one kind of stray known exactly in every stroke. */
function covarianceWithout(fit: Fit, stray: number): number[][] | null {
  const information = fit.unknowns.map((_, i) => fit.unknowns.map((_, j) => Number(i === j)));
  for (const shot of fit.shots) {
    if (shot.evidence !== null) addInformation(information, shot, shot.evidence, fit, stray);
  }
  const factor = cholesky(information);
  return factor && choleskyInverse(factor);
}

function addInformation(
  information: number[][],
  { residuals, verdict }: FittedShot,
  evidence: ShotEvidence,
  fit: Fit,
  stray: number,
): void {
  const rows = evidence.perStray.map((row) => row.filter((_, index) => index !== stray));
  const factor = cholesky(readingCovariance(rows));
  if (factor === null) return;
  const inverse = choleskyInverse(factor);
  const columns = changePerUnknown(residuals, fit.unknowns, evidence);
  const share = verdict.weight / (fit.stretch * fit.stretch);
  residuals.touches.forEach((i, a) => {
    const line = information[i] ?? [];
    const tied = inverse.map((row) => dot(row, columns[a] ?? []));
    residuals.touches.forEach((j, b) => {
      line[j] = (line[j] ?? 0) + share * dot(tied, columns[b] ?? []);
    });
  });
}
