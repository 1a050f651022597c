import type { AimResult, Shot } from '../engine/direct/shot';

/** The shot set aside, its answer, and how the present aim differs from it. */
export interface Comparison {
  readonly shot: Shot;
  readonly result: AimResult;
  /** The present aim line less the held one, right +; null unless both have an answer. */
  readonly change: { readonly onObjectBallM: number; readonly offsetM: number } | null;
}

/** Sets a held shot's answer beside the present one. */
export function compareShots(held: Shot, result: AimResult, present: AimResult): Comparison {
  if (!result.ok || !present.ok) return { shot: held, result, change: null };
  const change = {
    onObjectBallM: present.aimOnObjectBallM - result.aimOnObjectBallM,
    offsetM: present.aimOffsetM - result.aimOffsetM,
  };
  return { shot: held, result, change };
}
