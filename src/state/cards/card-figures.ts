import { aimOffsetM } from '../../diagram/aim-offset';
import { type Shot, strokeOf } from '../../engine/direct/shot';
import { solveAim } from '../../engine/direct/solve-aim';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { directPot } from '../../engine/goal/direct-pot';
import { certaintyOf } from '../../engine/room/certainty';
import { DIAMONDS_ALONG } from '../../engine/table/diamonds';
import { radOf } from '../../units/angle-degrees';
import { FELT_FIGURES, FIRM_MPS, MEDIUM_MPS, SOFT_MPS } from '../../units/felt-figures';
import { speedOfRun } from '../../units/table-run';
import type { AimMark } from '../../units/unit-names';
import { thrownAngleRad } from '../thrown-angle';

/** What a card is worked out for. */
export interface CardSetting extends KitKnowledge {
  /** Nose to nose. */
  readonly tableLengthM: number;
  readonly tipDiameterM: number;
  /** The contacts told of, to the right, fractions of the radius. */
  readonly sides: readonly number[];
  /** From which ball's centre an aim is told. */
  readonly lead: AimMark;
}

/** Where to aim from one distance. */
export interface AimRow {
  readonly distanceM: number;
  /** Right +, m; at each speed every side in turn. Null: there is no aim. */
  readonly offsetsM: readonly (number | null)[];
}

/** Straight shots with the cue so steep. */
export interface AimTable {
  readonly elevationRad: number;
  readonly rows: readonly AimRow[];
  /** One standard deviation of what stands at {@link SURE_AT}, m; null where there is no aim. */
  readonly sdM: number | null;
}

/** How far a ball is thrown off the line of centres, rad, at each speed; null: there is no aim. */
export interface ThrowRow {
  readonly cutRad: number;
  readonly thrownRad: readonly (number | null)[];
}

/** The figures of a card, SI. */
export interface CardFigures {
  readonly level: AimTable;
  readonly raised: AimTable;
  readonly throws: readonly ThrowRow[];
  /** How far the cue ball goes before it throws, to the ghost ball. */
  readonly throwFromM: number;
  readonly pivotM: number;
  /** What speed runs so many table lengths. */
  readonly runs: readonly { readonly lengths: number; readonly speedMps: number }[];
}

export const CARD_SPEEDS: readonly number[] = [SOFT_MPS, MEDIUM_MPS, FIRM_MPS];
const DIAMONDS: readonly number[] = [1, 2, 4, 6];
const CUTS_RAD: readonly number[] = [15, 30, 45, 60].map(radOf);
const LENGTHS: readonly number[] = [1, 2, 3, 4];
/** About as level as the rails let a cue be (common practice, no source). */
const LEVEL_RAD = radOf(3);
const RAISED_RAD = radOf(15);
/** Which row, and speed, tell how sure the figures are, with the most side. */
export const SURE_AT = { row: 2, speed: 1 } as const;
/** From so far throw is told, diamonds. */
const THROW_DIAMONDS = 2;

/**
 * Works a card out by the engine's own solver, in steps: it gives null until the figures are whole.
 * The bed is taken as level, so that left side is the mirror image of right.
 */
export function* workOutCard(setting: CardSetting): Generator<CardFigures | null, void> {
  const { kit, tipDiameterM, tableLengthM } = setting;
  const level = yield* aimTable(setting, LEVEL_RAD);
  const raised = yield* aimTable(setting, RAISED_RAD);
  const throws: ThrowRow[] = [];
  const throwFromM = (THROW_DIAMONDS * tableLengthM) / DIAMONDS_ALONG;
  for (const cutRad of CUTS_RAD) {
    const thrownRad = CARD_SPEEDS.map((speedMps) => {
      const shot = {
        distanceM: throwFromM,
        cutRad,
        side: 0,
        height: 0,
        elevationRad: LEVEL_RAD,
        speedMps,
      };
      const answer = solveAim(shot, kit);
      const thrown = answer.ok ? thrownAngleRad(answer) : null;
      return thrown && Math.abs(thrown);
    });
    throws.push({ cutRad, thrownRad });
    yield null;
  }
  const bed = { kit, tableLengthM };
  const runs = LENGTHS.map((lengths) => ({ lengths, speedMps: speedOfRun(lengths, bed) }));
  const pivotM = FELT_FIGURES.pivot({ kit, tipDiameterM, tableLengthM });
  yield { level, raised, throws, throwFromM, pivotM, runs };
}

function* aimTable(setting: CardSetting, elevationRad: number): Generator<null, AimTable> {
  const { kit, tableLengthM, sides, lead } = setting;
  const rows: AimRow[] = [];
  for (const diamonds of DIAMONDS) {
    const distanceM = (diamonds * tableLengthM) / DIAMONDS_ALONG;
    const offsetsM = CARD_SPEEDS.flatMap((speedMps) =>
      sides.map((side) => {
        const answer = solveAim(straight({ distanceM, side, elevationRad, speedMps }), kit);
        if (!answer.ok) return null;
        return lead === 'object-ball' ? answer.aimOnObjectBallM : answer.aimOffsetM;
      }),
    );
    rows.push({ distanceM, offsetsM });
    yield null;
  }
  const sdM = sdOf(setting, {
    distanceM: rows[SURE_AT.row]?.distanceM ?? 0,
    side: sides.at(-1) ?? 0,
    elevationRad,
    speedMps: CARD_SPEEDS[SURE_AT.speed] ?? 0,
  });
  yield null;
  return { elevationRad, rows, sdM };
}

function straight(asked: Pick<Shot, 'distanceM' | 'side' | 'elevationRad' | 'speedMps'>): Shot {
  return { ...asked, cutRad: 0, height: 0 };
}

/** One standard deviation of an aim for what is not known of the kit, m at the leading ball. */
function sdOf(
  { kit, spread, correlation, lead }: CardSetting,
  asked: Parameters<typeof straight>[0],
): number | null {
  const shot = straight(asked);
  const answer = solveAim(shot, kit);
  if (!answer.ok) return null;
  const { aimRad } = answer;
  const { ballRadiusM } = kit;
  const task = directPot(shot, { kind: 'angle', halfAngleRad: 1 }, ballRadiusM);
  const { aimSdRad } = certaintyOf(task, kit, strokeOf(shot, aimRad), spread, correlation);
  const at = (rad: number) => aimOffsetM(shot, ballRadiusM, lead, rad);
  return at(aimRad + aimSdRad) - at(aimRad);
}
