import type { Refusal } from '../engine/direct/shot';
import type { Range } from '../engine/numerics/range';
import { refusalWords, type Wording } from '../words/refusal-words';

/** A refusal in words, whose field goes by its name in the request, dotted where it is nested. */
export interface DoorRefusal extends Wording {
  readonly ok: false;
  readonly reason: string;
  readonly field?: string;
}

/** A refusal of the engine in words. */
export function worded(refusal: Refusal): DoorRefusal {
  const { ok, reason, field } = refusal;
  const told = { ok, reason, ...refusalWords(refusal) };
  return field === undefined ? told : { ...told, field };
}

/** The request's own names for what the engine counts in radians. */
const REQUEST_NAMES: Readonly<Record<string, string>> = {
  cutRad: 'cutDeg',
  elevationRad: 'elevationDeg',
  aimRad: 'aimAngleDeg',
  objectDistanceM: 'target.distanceM',
};

/** Whether what was worked out is a refusal. */
export function isRefusal(value: object): value is DoorRefusal {
  return 'ok' in value && value.ok === false;
}

/** A refusal in the request's names. */
export function refused({ field, ...refusal }: DoorRefusal): DoorRefusal {
  return field === undefined ? refusal : { ...refusal, field: REQUEST_NAMES[field] ?? field };
}

/** The refusal of a part of a request, whose own field is told from the whole of it. */
export function refusedAt(path: string, refusal: DoorRefusal): DoorRefusal {
  const { field, ...rest } = refused(refusal);
  return { ...rest, field: field === undefined ? path : `${path}.${field}` };
}

/** What is given is not what a field takes. */
export function notTaken(field: string, wanted: string, remedy = `Give ${wanted}.`): DoorRefusal {
  const message = `${field} must be ${wanted}.`;
  return { ok: false, reason: 'out-of-range', message, remedy, field };
}

/** A range in words. */
export function span({ min, max }: Range): string {
  return `a number from ${min} to ${max}`;
}
