import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { BedSlope } from '../../engine/kit/kit';
import { type KitAlong, kitAlong, slopeSeenAlong } from '../../engine/kit/kit-along';
import { KIT_QUANTITIES } from '../../engine/kit/kit-spread';

const ALONG = KIT_QUANTITIES.indexOf('bedSlopeAlong');
const RIGHT = KIT_QUANTITIES.indexOf('bedSlopeRight');

/** What is known of a kit as a shot sees it. */
export interface KnownAlong extends KitKnowledge {
  readonly kit: KitAlong;
}

type Matrix = readonly (readonly number[])[];

/**
 * What is known of a kit, as a shot sees it: a table's slope is measured as seen from the break end,
 * and a shot needs it along its own line.
 *
 * @param recordSlope that of the table's record, which is taken to be along the shot
 * @param headingRad how the shot's line runs over the table, 0 away from the break end, right +;
 *   null: that is not said
 */
export function knownAlongShot(
  known: KitKnowledge,
  recordSlope: BedSlope,
  headingRad: number | null,
): KnownAlong {
  return headingRad === null
    ? inAnyDirection(known, recordSlope)
    : inOneDirection(known, headingRad);
}

/**
 * Where the direction is not said, the slope stays the record's own. It may lie off by whatever was
 * measured beyond that, which points along any direction alike: its mean square along one is half
 * its square.
 */
function inAnyDirection(known: KitKnowledge, recordSlope: BedSlope): KnownAlong {
  const { kit, spread, correlation } = known;
  const along = kit.bedSlope.alongM_per_M - recordSlope.alongM_per_M;
  const right = kit.bedSlope.rightM_per_M - recordSlope.rightM_per_M;
  const slopeSd = Math.hypot(along, right, spread.bedSlopeAlong, spread.bedSlopeRight) / Math.SQRT2;
  return {
    kit: kitAlong({ ...kit, bedSlope: recordSlope }, 0),
    spread: { ...spread, bedSlopeAlong: slopeSd, bedSlopeRight: slopeSd },
    correlation: correlation.map((row, i) =>
      row.map((tie, j) => (i !== j && (isSlope(i) || isSlope(j)) ? 0 : tie)),
    ),
  };
}

function isSlope(index: number): boolean {
  return index === ALONG || index === RIGHT;
}

/** Slope, spread and ties turned to the shot's line: the covariance C becomes TCT'. */
function inOneDirection(known: KitKnowledge, headingRad: number): KnownAlong {
  const { kit, spread, correlation } = known;
  const sds = KIT_QUANTITIES.map((name) => spread[name]);
  const covariance = correlation.map((row, i) =>
    row.map((tie, j) => tie * (sds[i] ?? 0) * (sds[j] ?? 0)),
  );
  const turned = withTurnedRows(transposed(withTurnedRows(covariance, headingRad)), headingRad);
  const turnedSds = turned.map((row, i) => Math.sqrt(Math.max(0, row[i] ?? 0)));
  return {
    kit: kitAlong(kit, headingRad),
    spread: {
      ...spread,
      bedSlopeAlong: turnedSds[ALONG] ?? spread.bedSlopeAlong,
      bedSlopeRight: turnedSds[RIGHT] ?? spread.bedSlopeRight,
    },
    correlation: turned.map((row, i) =>
      row.map((value, j) => {
        const size = (turnedSds[i] ?? 0) * (turnedSds[j] ?? 0);
        return i === j || size === 0 ? Number(i === j) : value / size;
      }),
    ),
  };
}

/** The two rows of the slope turned as the slope itself is. */
function withTurnedRows(matrix: Matrix, turnRad: number): Matrix {
  const [along = [], right = []] = [matrix[ALONG], matrix[RIGHT]];
  const turned = along.map((value, column) =>
    slopeSeenAlong({ alongM_per_M: value, rightM_per_M: right[column] ?? 0 }, turnRad),
  );
  return matrix.map((row, i) => {
    if (i === ALONG) return turned.map(({ alongM_per_M }) => alongM_per_M);
    return i === RIGHT ? turned.map(({ rightM_per_M }) => rightM_per_M) : row;
  });
}

function transposed(matrix: Matrix): Matrix {
  return matrix.map((_, i) => matrix.map((row) => row[i] ?? 0));
}
