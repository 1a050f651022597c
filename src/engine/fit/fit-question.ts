import type { Kit } from '../kit/kit';
import type { Part } from '../kit/kit-numbers';
import type { KitQuantity, KitSpread } from '../kit/kit-spread';
import type { Readings, SpeedWord } from './trials/trial';
import type { TrialShot } from './trials/trials';

/** Which cue, cloth, ball set and table a shot was played with, by names of the caller's. */
export type Parts = { readonly [P in Part]: string };

/** What is the player's own: a steady error of the aim, and how hard each word is. */
export type PlayerQuantity = 'aimBias' | SpeedWord;
export type FitQuantity = KitQuantity | PlayerQuantity;

/** The kit of a shot before anything was measured: its middle, and how little is known of it. */
export interface KitPrior {
  readonly parts: Parts;
  /** Its bed's slope as seen from the break end. Parts of one name have the same numbers in all. */
  readonly kit: Kit;
  readonly spread: KitSpread;
}

/** How a stroke strays from what was meant, one standard deviation each. */
export interface StrokeScatter {
  readonly directionRad: number;
  /** Of the tip, sideways and in height alike, m. */
  readonly tipM: number;
  readonly elevationRad: number;
  /** As a share of the speed. */
  readonly speedShare: number;
}

/** A shot of a trial with what was read. */
export interface FitShot {
  readonly id: string;
  readonly shot: TrialShot;
  readonly readings: Readings;
  readonly prior: KitPrior;
  readonly scatter: StrokeScatter;
}

/**
 * Before anything is read, one standard deviation each: a steady aim error in rad (common practice,
 * no source); how hard a word is, as a share (our guess).
 */
export const PLAYER_SPREAD: { readonly [Q in PlayerQuantity]: number } = {
  aimBias: (0.5 * Math.PI) / 180,
  soft: 0.25,
  medium: 0.25,
  firm: 0.25,
};

/** As many shots as are fitted at once: they take half a minute. */
export const MOST_SHOTS = 400;
