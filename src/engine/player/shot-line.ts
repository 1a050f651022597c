import { type Shot, strokeOf } from '../direct/shot';
import { solveAim } from '../direct/solve-aim';
import { directPot } from '../goal/direct-pot';
import type { Target } from '../goal/target';
import { goes, missAt, type Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { type KitSpread, kitMoved } from '../kit/kit-spread';
import type { StrokeProfile } from '../room/stroke-profile';
import { directionSlope, type EndedBy, type RoomWindow, roomWindow } from '../room/windows';
import type { Stroke } from '../stroke/stroke';
import type { RESULTS } from './results';
import { bentBy, type SquirtBends, squirtBends, tipSlope } from './squirt-bends';

export type Result = (typeof RESULTS)[number];

/** A shot with what its player would have hit and asked of it. */
export interface AskedShot {
  readonly shot: Shot;
  readonly target: Target;
  readonly kit: Kit;
  readonly spread: KitSpread;
}

/**
 * A shot as the line sees it: the cue's direction from its solved aim, rad, right +, and what of
 * everything else works like direction. By straight lines, but for the edges, which are exact. Plain
 * data, which hangs on the shot, its target, kit and spread alone: it can be kept with them.
 */
export interface PlainLine {
  /** The solved aim, from the straight line, rad, right +. */
  readonly solvedRad: number;
  /** Between these it goes; beyond them it passes by, and beyond the outer ones nothing is touched. */
  readonly edges: readonly [untouched: number, low: number, high: number, untouched: number];
  /** What passing by the lower and the higher edge is called. */
  readonly passes: readonly [low: Result, high: Result];
  /** 1 where a line further right is fuller, −1 where it is thinner; 0 on a straight shot. */
  readonly fullSide: 1 | -1 | 0;
  /** Rad of line for a m of tip sideways, a m of tip in height, a share of the speed, a rad of the cue. */
  readonly perTipM: number;
  readonly perHeightM: number;
  readonly perSpeedShare: number;
  readonly perElevation: number;
  /** How line and tip hang on the cue's squirt. */
  readonly squirt: SquirtBends;
  /** Rad of line for a standard deviation of what is not known of the kit but for squirt. */
  readonly kitSdRad: number;
  /** The logarithm of the least speed that gets there over the meant one; null where any does. */
  readonly leastSpeed: number | null;
}

/** A line with the shot that it is of. */
export interface ShotLine extends PlainLine {
  readonly task: Task;
  readonly kit: Kit;
  readonly spread: KitSpread;
  /** With its solved aim. */
  readonly stroke: Stroke;
}

/** A shot as it is meant: its task and its stroke; null where it has no aim, or does not go even so. */
export function asMeant({ shot, target, kit }: Pick<AskedShot, 'shot' | 'target' | 'kit'>) {
  const answer = solveAim(shot, kit);
  if (!answer.ok) return null;
  const task = directPot(shot, target, kit.ballRadiusM);
  const stroke = strokeOf(shot, answer.aimRad);
  return goes(missAt(task, kit, stroke)) ? { task, stroke } : null;
}

/** The line of a shot; null where the shot has no aim, or does not go even as meant. */
export function shotLine(asked: AskedShot): ShotLine | null {
  const { shot, kit, spread } = asked;
  const meant = asMeant(asked);
  if (meant === null) return null;
  const { task, stroke } = meant;
  const window = roomWindow(task, kit, stroke, 'aimRad');
  const perAim = window.directionPerUnit;
  if (!perAim) return null;
  const per = (input: keyof Stroke) => (directionSlope(task, kit, stroke, input) ?? 0) / perAim;
  const tipPerM = 1 / (kit.ballRadiusM + kit.tipRadiusM);
  const fullSide = Math.sign(shot.cutRad) as PlainLine['fullSide'];
  return {
    task,
    kit,
    spread,
    stroke,
    solvedRad: stroke.aimRad,
    edges: edgesOf(window, shot, kit, stroke.aimRad),
    passes: [passing(window.low.endedBy, -1, fullSide), passing(window.high.endedBy, 1, fullSide)],
    fullSide,
    perTipM: tipSlope(task, kit, stroke),
    perHeightM: per('height') * tipPerM,
    perSpeedShare: per('speedMps') * stroke.speedMps,
    perElevation: per('elevationRad'),
    squirt: squirtBends(task, kit, spread, stroke),
    kitSdRad: kitSdRad(task, kit, spread, stroke),
    leastSpeed: leastSpeedOf(roomWindow(task, kit, stroke, 'speedMps'), stroke),
  };
}

/** A line without the shot that it is of. */
export function plainLine({ task, kit, spread, stroke, ...plain }: ShotLine): PlainLine {
  return plain;
}

/**
 * What passing by an edge is called. One at which the ball stops short, or is not touched, has the
 * name of the side it lies on.
 *
 * @param side 1 where the edge lies right of the aim, −1 left of it
 */
function passing(endedBy: EndedBy, side: 1 | -1, fullSide: PlainLine['fullSide']): Result {
  if (endedBy === 'thin' || endedBy === 'full' || endedBy === 'left' || endedBy === 'right') {
    return endedBy;
  }
  // Hit further right, a ball straight ahead goes left.
  if (fullSide === 0) return side > 0 ? 'left' : 'right';
  return side === fullSide ? 'full' : 'thin';
}

/** The two lines between which the object ball is touched go by the balls' places alone. */
function edgesOf(window: RoomWindow, shot: Shot, kit: Kit, solvedRad: number) {
  const reachM = 2 * kit.ballRadiusM;
  const asideM = reachM * Math.sin(shot.cutRad);
  const aheadM = shot.distanceM + reachM * Math.cos(shot.cutRad);
  const towards = Math.atan2(asideM, aheadM);
  const half = Math.asin(Math.min(1, reachM / Math.hypot(asideM, aheadM)));
  const [low, high] = [window.low.value - solvedRad, window.high.value - solvedRad];
  return [Math.min(low, towards - half), low, high, Math.max(high, towards + half)] as const;
}

/** How the aim hangs on what is not known of the kit but for squirt, one standard deviation. */
function kitSdRad(task: Task, kit: Kit, spread: KitSpread, stroke: Stroke): number {
  let square = 0;
  for (const quantity of task.quantities) {
    if (quantity === 'massRatio' || spread[quantity] === 0) continue;
    const [less, more] = [-1, 1].map(
      (sds) => task.aims(kitMoved(kit, spread, quantity, sds), stroke)[0] ?? stroke.aimRad,
    ) as [number, number];
    square += ((more - less) / 2) ** 2;
  }
  return Math.sqrt(square);
}

function leastSpeedOf({ low }: RoomWindow, { speedMps }: Stroke): number | null {
  return low.endedBy === 'short' ? Math.log(low.value / speedMps) : null;
}

/** What a m of tip sideways does to a line with a cue whose squirt is so many deviations off. */
export function onCue({ perTipM, squirt }: TipLine, squirtSds: number): Pick<TipLine, 'perTipM'> {
  return { perTipM: perTipM + bentBy(squirt.perTipM, squirtSds) };
}

/** What of a line the tip's scatter goes by. */
export type TipLine = Pick<PlainLine, 'perTipM' | 'squirt'>;

/** How a stroke's line scatters on a shot, one standard deviation, rad: direction and tip alone. */
export function lineScatter(
  profile: StrokeProfile,
  { perTipM }: Pick<PlainLine, 'perTipM'>,
): number {
  const { directionRad, tipM, together } = profile;
  const tip = perTipM * tipM;
  return Math.sqrt(directionRad ** 2 + 2 * together * directionRad * tip + tip * tip);
}
