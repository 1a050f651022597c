import { STANDARD_GRAVITY as g } from '../ball/gravity';
import type { Kit } from '../kit/kit';
import { normalBelow } from '../numerics/normal';
import type { Between } from './between';
import type { LineScatter } from './line-scatter';
import type { PotLine } from './pot-line';

/** The lines of a cut, with all that sways how often it goes. */
export interface PotShot {
  readonly line: PotLine;
  readonly between: Between;
  /** The cue's, over what lies behind the cue ball, rad. */
  readonly elevationRad: number;
  readonly isCorner: boolean;
  /** Both balls are frozen to the rail along which the ball is sent. */
  readonly isAlongRail: boolean;
}

/*
 * All constants below are fitted together, by least squares, to the chances of 550 random layouts, of
 * 512 drawn strokes each, of steady, club and beginning players with an ordinary kit that nobody has
 * measured. The forms are laws of the engine, shortened.
 */

/** A ball that touches a point of a cushion still falls: so much wider is a pocket at its mouth, m. */
const CORNER_M = 0.0069;
const SIDE_M = 0.0073;
/** A side pocket askew has no more than this share on top. */
const SIDE_SHARE = 0.9;
/** What comes on top at a corner for a ball that comes along the rail, from and over how much askew. */
const ALONG_M = 0.0238;
const ALONG_FROM_RAD = 0.5;
const ALONG_OVER_RAD = 0.2;
/** The same for a ball that lies at the rail, at a metre; from afar it is less than in proportion. */
const RAILED_M = 0.0089;
const RAILED_POWER = 0.625;
const RAILED_FROM_M = 0.3;
/** Swerve of a little side with a raised cue, as a share of side and sin of the elevation; and over which way. */
const SWERVE = 0.282;
const SLIDE_M = 0.57;
/** Throw of a little side, rad; it is less in a cut, where the balls slip anyway. */
const THROW_PER_SIDE = 0.231;
/** What a raised cue scatters besides, as a share of the tip's scatter and sin of the elevation. */
const RAISED = 0.117;
/** What is not known of throw, rad. */
const THROW_SD_RAD = 0.0038;
/** Throw that makes a thin cut thinner, rad; and the fastest stroke, whose speed the need is told by. */
const THROW_RAD = 0.041;
const FASTEST_MPS = 3.1;
const NEED_SHARE = 0.2;
/** The share that is left where a hair decides. */
const FROZEN_SHARE = 0.26;

/** A cut this thin, as a share of two radii, is as thin as any. */
const THINNEST = 0.05;

/** How likely one who may be the player pots a ball by a plain stroke, 0 to 1. */
export function potChance(shot: PotShot, one: LineScatter, kit: Kit): number {
  const { line, between, isAlongRail } = shot;
  if (between.clearM < 0) return 0;
  const isRight = line.cutRad > 0;
  const cutRad = Math.abs(line.cutRad);
  const extraRad = wider(shot);
  const leftRad = Math.min(line.leftRad + extraRad, between.leftRad);
  const rightRad = Math.min(line.rightRad + extraRad, between.rightRad);
  const lowM = contactAside(cutRad - (isRight ? leftRad : rightRad), kit);
  const thinRad = cutRad + (isRight ? rightRad : leftRad);
  const highM = contactAside(thinRad, kit);
  const meantM = thinRad > Math.PI / 2 ? (lowM + highM) / 2 : contactAside(cutRad, kit);
  // A ball cut to the right is met on its left: a cue that points right meets it fuller.
  const byAimRad = cutRad === 0 || !isRight ? one.aimRad : -one.aimRad;
  const atM = meantM + line.distanceM * (byAimRad - one.fullRad);
  const sdM = contactScatter(shot, one, kit);
  const goes = normalBelow((highM - atM) / sdM) - normalBelow((lowM - atM) / sdM);
  return goes * reaches(line, kit) * (isAlongRail ? FROZEN_SHARE : 1);
}

/** How far beside the object ball's middle the cue ball meets it to send it so far off its own way, m. */
function contactAside(cutRad: number, { ballRadiusM }: Kit): number {
  return 2 * ballRadiusM * (cutRad < Math.PI / 2 ? Math.sin(cutRad) : 1);
}

/** One standard deviation of that, m. */
function contactScatter(
  { line, elevationRad }: PotShot,
  { directionRad, tip, together, squirtRad }: LineScatter,
  { ballRadiusM }: Kit,
): number {
  const { distanceM, cutRad } = line;
  const raised = Math.sin(elevationRad);
  const cos = Math.max(THINNEST, Math.cos(cutRad));
  const thick = 2 * ballRadiusM * cos;
  const swerve = (SWERVE * raised * distanceM) / (distanceM + SLIDE_M);
  // Side squirts the cue ball away and throws the ball back: near by, one undoes the other.
  const perSideM = distanceM * (swerve - squirtRad) + thick * cos * THROW_PER_SIDE;
  return Math.hypot(
    distanceM * directionRad + together * tip * perSideM,
    Math.sqrt(1 - together * together) * tip * perSideM,
    RAISED * distanceM * tip * raised,
    thick * THROW_SD_RAD,
  );
}

/** What falls off the points of the cushions comes on top of what is open, rad either way. */
function wider({ line, isCorner }: PotShot): number {
  const { runM, askewRad, leftRad, rightRad, isRailed } = line;
  if (!isCorner) return Math.min(SIDE_M / runM, SIDE_SHARE * Math.min(leftRad, rightRad));
  if (isRailed) return (RAILED_M / runM) * Math.max(RAILED_FROM_M, runM) ** -RAILED_POWER;
  const along = Math.min(1, Math.max(0, (askewRad - ALONG_FROM_RAD) / ALONG_OVER_RAD));
  return (CORNER_M + along * ALONG_M) / runM;
}

/** How likely it is that the ball can be sent so far at all: a thin cut takes most of the speed. */
function reaches({ runM, cutRad }: PotLine, { rollFriction }: Kit): number {
  const share = Math.cos(Math.min(Math.PI / 2, Math.abs(cutRad) + THROW_RAD));
  const needMps = ((7 / 5) * Math.sqrt(2 * rollFriction * g * runM)) / Math.max(0.01, share);
  return normalBelow((FASTEST_MPS / needMps - 1) / NEED_SHARE);
}
