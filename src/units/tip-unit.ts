import { TIP_CONTACT } from './tip-contact';
import type { UnitFacts } from './unit-facts';
import type { TipUnit } from './unit-names';

/** Width of a cue's tip, m (common practice, no source). */
const TIP_WIDTH_M = 0.013;

/** What a unit of tip contact hangs on. */
export interface TipOn {
  readonly ballRadiusM: number;
  /** Radius of the tip's dome. */
  readonly tipRadiusM: number;
}

/**
 * Tips in a contact one radius from the centre. One tip of side is the cue's axis moved by the width
 * of a tip, 13 mm; the dome puts the axis farther out than the contact by its own radius's share.
 */
export function tipsPerRadius({ ballRadiusM, tipRadiusM }: TipOn): number {
  return (ballRadiusM + tipRadiusM) / TIP_WIDTH_M;
}

const TIPS: UnitFacts = {
  symbol: 'tips',
  symbolOfOne: 'tip',
  name: 'tips',
  spaced: true,
  fineStep: 0.125,
  coarseStep: 0.5,
  decimals: 2,
  leastDecimals: 0,
  eighths: true,
};

/** Between contacts that are marked on the face, in the unit. */
const MARKED_TIPS = 0.5;
const MARKED_RADII = 0.25;

/**
 * A unit of tip contact: its facts, how many of it are a radius, and how far apart contacts are
 * marked, in radii. O'clock counts its figures in tips.
 */
export function tipScale(unit: TipUnit, on: TipOn) {
  if (unit === 'radii') return { facts: TIP_CONTACT, perRadius: 1, markedRadii: MARKED_RADII };
  const perRadius = tipsPerRadius(on);
  return { facts: TIPS, perRadius, markedRadii: MARKED_TIPS / perRadius };
}

/** Half hours on a clock's face. */
const HALF_HOURS = 24;

/** Where on a clock's face a contact lies, to the half hour: "9" or "4:30"; null at the centre. */
export function clockHour(side: number, height: number): string | null {
  if (side === 0 && height === 0) return null;
  const turn = Math.atan2(side, height) / (2 * Math.PI);
  const halves = (Math.round(turn * HALF_HOURS) + HALF_HOURS) % HALF_HOURS;
  const hour = Math.floor(halves / 2) || 12;
  return halves % 2 === 0 ? `${hour}` : `${hour}:30`;
}
