import type { Task } from '../goal/task';
import type { Kit } from '../kit/kit';
import { type KitSpread, kitMoved } from '../kit/kit-spread';
import { directionSlope } from '../room/windows';
import type { Stroke } from '../stroke/stroke';

/**
 * How a line hangs on the squirt of the cue in play, in standard deviations of what is not known of
 * its mass ratio: + is less squirt. Plain data.
 */
export interface SquirtBends {
  /** Where the line lies, rad, right +. */
  readonly aimRad: Bend;
  /** What a m of tip sideways does to it, rad/m: a deviation changes that by half and more. */
  readonly perTipM: Bend;
}

/** So much for each deviation, and so much for each squared. */
export type Bend = readonly [perSd: number, perSquare: number];

/** What a cue adds whose squirt is so many deviations off. */
export function bentBy([perSd, perSquare]: Bend, sds: number): number {
  return sds * (perSd + sds * perSquare);
}

/** A squirt that is known so many times as well: its deviations are as much smaller. */
export function bendsAsSure({ aimRad, perTipM }: SquirtBends, times: number): SquirtBends {
  const of = ([perSd, perSquare]: Bend): Bend => [perSd / times, perSquare / (times * times)];
  return { aimRad: of(aimRad), perTipM: of(perTipM) };
}

/** The bends through a deviation either way, each played on the engine. */
export function squirtBends(task: Task, kit: Kit, spread: KitSpread, stroke: Stroke): SquirtBends {
  const [less, here, more] = [-1, 0, 1].map((sds) =>
    onKit(task, sds === 0 ? kit : kitMoved(kit, spread, 'massRatio', sds), stroke),
  ) as [OnKit, OnKit, OnKit];
  const of = (pick: (one: OnKit) => number) => bendThrough(pick(less), pick(here), pick(more));
  return { aimRad: of(({ offRad }) => offRad), perTipM: of(({ perTipM }) => perTipM) };
}

interface OnKit {
  readonly offRad: number;
  readonly perTipM: number;
}

/** Who aims by the kit as it stands is off by as much as the aim would move, the other way. */
function onKit(task: Task, kit: Kit, stroke: Stroke): OnKit {
  const [solvedRad = stroke.aimRad] = task.aims(kit, stroke);
  return { offRad: stroke.aimRad - solvedRad, perTipM: tipSlope(task, kit, stroke) };
}

/** Rad of line for a m of tip sideways; 0 where a nudge either way loses the ball. */
export function tipSlope(task: Task, kit: Kit, stroke: Stroke): number {
  const perSide = directionSlope(task, kit, stroke, 'side') ?? 0;
  const perAim = directionSlope(task, kit, stroke, 'aimRad');
  return perAim ? perSide / perAim / (kit.ballRadiusM + kit.tipRadiusM) : 0;
}

function bendThrough(less: number, here: number, more: number): Bend {
  return [(more - less) / 2, (more + less) / 2 - here];
}
