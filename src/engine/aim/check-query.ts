import type { Kit } from '../model/kit';
import { findKitProblem } from '../model/kit-ranges';
import { isBeyondMiscue } from '../model/miscue-limit';
import { isWithin, type Range } from '../model/range';
import { comesToRest } from '../model/roll';
import { AIM_RANGE, INPUT_RANGES } from './input-ranges';
import { outOfRange, refusal } from './refusal';
import type { Refusal, Shot } from './shot';

interface Wording {
  readonly name: string;
  readonly unit: string;
  /** From SI to the unit of the message. */
  readonly scale: number;
}

const DEGREES = { unit: '°', scale: 180 / Math.PI };

const WORDING: Readonly<Record<keyof Shot | 'aimRad', Wording>> = {
  distanceM: { name: 'Distance', unit: ' m', scale: 1 },
  cutRad: { name: 'Cut', ...DEGREES },
  side: { name: 'Side', unit: ' of the radius', scale: 1 },
  height: { name: 'Height', unit: ' of the radius', scale: 1 },
  elevationRad: { name: 'Cue elevation', ...DEGREES },
  speedMps: { name: 'Speed', unit: ' m/s', scale: 1 },
  objectDistanceM: { name: 'The object ball’s distance', unit: ' m', scale: 1 },
  aimRad: { name: 'Aim', ...DEGREES },
};

/** Why the engine cannot take a query, or null where it can. */
export function checkQuery(shot: Shot, kit: Kit, aimRad?: number): Refusal | null {
  const outside = checkShot(shot) ?? checkAim(aimRad) ?? checkKit(kit);
  if (outside !== null) return outside;
  if (isBeyondMiscue(shot.side, shot.height)) return refusal('beyond-miscue-limit', 'side');
  return comesToRest(kit) ? null : refusal('never-stops', 'kit');
}

function checkShot(shot: Shot): Refusal | null {
  for (const field in INPUT_RANGES) {
    const key = field as keyof Shot;
    if (key === 'objectDistanceM' && shot[key] === undefined) continue;
    if (!isWithin(INPUT_RANGES[key], shot[key])) return tellRange(key, INPUT_RANGES[key]);
  }
  return null;
}

function checkAim(aimRad: number | undefined): Refusal | null {
  if (aimRad === undefined || isWithin(AIM_RANGE, aimRad)) return null;
  return tellRange('aimRad', AIM_RANGE);
}

function checkKit(kit: Kit): Refusal | null {
  const problem = findKitProblem(kit);
  if (problem === null) return null;
  const { min, max } = problem.range;
  const span = max < Number.POSITIVE_INFINITY ? `from ${min} to ${max}` : `at least ${min}`;
  const message = `${problem.quantity} of the kit must be a number ${span}.`;
  return outOfRange('kit', message, `Give it a value ${span}.`);
}

function tellRange(field: keyof Shot | 'aimRad', range: Range): Refusal {
  const { name, unit, scale } = WORDING[field];
  const span = `from ${tidy(range.min * scale)} to ${tidy(range.max * scale)}${unit}`;
  return outOfRange(field, `${name} must be a number ${span}.`, `Give a value ${span}.`);
}

function tidy(value: number): string {
  return String(Number(value.toPrecision(6)));
}
