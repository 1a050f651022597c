import { KIT_QUANTITIES, type KitSpread } from '../kit/kit-spread';
import { chanceOf } from '../room/chance';
import type { LikelyStroke, StrokeProfile } from '../room/stroke-profile';
import { likelihoodOfStop, type SpeedWindow } from './known-player';
import type { LevelTable } from './level-test';
import { type LimitShot, ordinaryShots } from './ordinary-shots';
import { asMeant } from './shot-line';

/** What can limit a player: line, speed, and what is not known of the kit. */
export const LIMITS = ['line', 'speed', 'kit'] as const;
export type Limit = (typeof LIMITS)[number];

/** Shots somebody played, and who plays: plain data. */
export interface LimitsJob {
  /**
   * The oldest first, each with what is not known of its kit as it counts for this player. The newest
   * count; of fewer than ten none does, and ordinary shots take their place.
   */
  readonly own: readonly LimitShot[];
  readonly profile: StrokeProfile;
  /** Where ordinary shots are laid. */
  readonly table: LevelTable;
}

/** How often the shots are made in the mean, and how much more often were one thing half as far off; 0 to 1. */
export interface Limits {
  readonly share: number;
  readonly gains: Readonly<Record<Limit, number>>;
  /** Of how many shots. */
  readonly shots: number;
  /** Whether they are the player's own. */
  readonly isOwn: boolean;
}

/** So many of somebody's shots tell what they play. */
const LEAST_OWN = 10;
const MOST_OWN = 12;
/** What would be half as far off. */
const HALF = 0.5;

/**
 * What limits a player most on some shots, aimed by their solved aims: the chance of each, and that with
 * one of three things half as far off, scatter and steady error alike. All by the engine's own chance,
 * on the same draws: so what differs is no noise. Four chances a shot, at most 12 shots.
 *
 * @returns null where none of the shots goes even as meant
 */
export function whatLimits({ own, profile, table }: LimitsJob): Limits | null {
  const isOwn = own.length >= LEAST_OWN;
  const shots = isOwn ? own.slice(-MOST_OWN) : ordinaryShots(table);
  const told = shots.flatMap((asked) => sharesOf(asked, profile) ?? []);
  if (told.length === 0) return null;
  const mean = (of: (one: Shares) => number) =>
    told.reduce((sum, one) => sum + of(one), 0) / told.length;
  const gain = (limit: Limit) => mean((one) => one[limit] - one.now);
  return {
    share: mean(({ now }) => now),
    gains: { line: gain('line'), speed: gain('speed'), kit: gain('kit') },
    shots: told.length,
    isOwn,
  };
}

type Shares = Readonly<Record<Limit | 'now', number>>;

function sharesOf(asked: LimitShot, profile: StrokeProfile): Shares | null {
  const { kit, spread, rest } = asked;
  const meant = asMeant(asked);
  if (meant === null) return null;
  const { task, stroke } = meant;
  const of = (who: StrokeProfile, unknown = spread) =>
    chanceOf(task, kit, stroke, who, unknown).share * (rest ? stopsIn(rest, who) : 1);
  const shares = {
    now: of(profile),
    line: of(halved(profile, 'line')),
    speed: of(halved(profile, 'speed')),
    kit: of(halved(profile, 'kit'), halfKnown(spread)),
  };
  return Object.values(shares).every(Number.isFinite) ? shares : null;
}

/** How often the cue ball stops where it is to: the mean over all who may be the player. */
function stopsIn(rest: SpeedWindow, { likely, speedShare, steady }: StrokeProfile): number {
  const of = (share: number, bias: number) =>
    likelihoodOfStop({ stroke: { speedShare: share }, speedBias: bias }, rest, 'in');
  if (likely === undefined) return of(speedShare, steady?.speedShare ?? 0);
  return likely.reduce((sum, one) => sum + of(one[2], one[5]), 0) / likely.length;
}

function halfKnown(spread: KitSpread): KitSpread {
  const halves = KIT_QUANTITIES.map((name) => [name, HALF * spread[name]]);
  return Object.fromEntries(halves) as KitSpread;
}

/**
 * A player of whom one thing is half as far off; of the kit, the squirt that their cue has. The steady
 * errors of the middle stay: those of all who may be the player are what counts.
 */
function halved(profile: StrokeProfile, limit: Limit): StrokeProfile {
  const [line, speed, kit] = LIMITS.map((one) => (one === limit ? HALF : 1)) as [
    number,
    number,
    number,
  ];
  const { directionRad, tipM, speedShare, likely } = profile;
  return {
    ...profile,
    directionRad: line * directionRad,
    tipM: line * tipM,
    speedShare: speed * speedShare,
    ...(likely && {
      likely: likely.map(
        ([direction, tip, share, aim, full, bias, massRatio]): LikelyStroke => [
          line * direction,
          line * tip,
          speed * share,
          line * aim,
          line * full,
          speed * bias,
          massRatio ** kit,
        ],
      ),
    }),
  };
}
