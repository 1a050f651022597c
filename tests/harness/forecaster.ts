import { standIn } from '../../src/engine/player/known-profile';
import type { PlayerKnowledge } from '../../src/engine/player/learn';
import { type AskedShot, type ShotLine, shotLine } from '../../src/engine/player/shot-line';
import { chanceOf } from '../../src/engine/room/chance';
import type { StrokeProfile } from '../../src/engine/room/stroke-profile';
import { HIDDEN_SPREAD, ordinaryShot } from './hidden-stroke';
import { seededRandom } from './seeded-random';

/** Says how often a shot goes. */
export type Forecaster = (line: ShotLine) => number;

/** Who takes a player for one with this profile. */
export function byProfile(profile: StrokeProfile, spread = HIDDEN_SPREAD): Forecaster {
  return ({ task, kit, stroke }) => chanceOf(task, kit, stroke, profile, spread).share;
}

/** Who knows of a player what was learnt: as the app tells it. */
export function byKnowledge(knowledge: PlayerKnowledge, question: ShotLine): Forecaster {
  const { profile, spread } = standIn(knowledge, question, HIDDEN_SPREAD);
  return byProfile(profile, spread);
}

/** A shot with its line. */
export interface LinedShot {
  readonly asked: AskedShot;
  readonly line: ShotLine;
}

/** Invented shots such as anybody plays, of which every one has an aim. */
export function ordinaryShots(seed: number, count: number): readonly LinedShot[] {
  const random = seededRandom(seed);
  const shots: LinedShot[] = [];
  while (shots.length < count) {
    const asked = ordinaryShot(random);
    const line = shotLine(asked);
    if (line !== null) shots.push({ asked, line });
  }
  return shots;
}

/** A shot that was forecast, and what became of it. */
export interface Forecast {
  readonly share: number;
  readonly went: boolean;
}

/** Mean square of what forecasts were off by. Source: Brier, Mon. Weather Rev. 78:1 (1950) (from memory). */
export function brier(forecasts: readonly Forecast[]): number {
  const squares = forecasts.map(({ share, went }) => (share - Number(went)) ** 2);
  return squares.reduce((sum, square) => sum + square, 0) / forecasts.length;
}

/** By how much forecasts are off in the mean, + too high, in so many bins of as many shots each. */
export function offByBin(forecasts: readonly Forecast[], bins: number): readonly number[] {
  const ordered = [...forecasts].sort((a, b) => a.share - b.share);
  return Array.from({ length: bins }, (_, bin) => {
    const at = (edge: number) => Math.round((edge * ordered.length) / bins);
    const held = ordered.slice(at(bin), at(bin + 1));
    return held.reduce((sum, { share, went }) => sum + share - Number(went), 0) / held.length;
  });
}
