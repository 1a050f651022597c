import type { ReadonlySignal } from '@preact/signals';
import type { PlayAim, Shot, SolveAim } from '../engine/direct/shot';
import type { Kit } from '../engine/kit/kit';
import type { LaidShot } from '../store/records';
import type { TableRuns } from '../units/table-run';
import type { DeskModel } from './desk-model';
import type { GoesAsMeant, NearestSpeed } from './speed-remedy';

/** A point of the cue ball's path: x right of the straight line, y along it, m. */
export interface PathPoint {
  readonly xM: number;
  readonly yM: number;
}

/** The cue ball's centre from its rest to the object ball, at an aim. */
export type TraceCueBall = (
  shot: Shot,
  kit: Kit,
  aimRad: number,
  samples: number,
) => readonly PathPoint[];

/** What the place Shot needs from the rest of the app. */
export interface ShotPorts {
  readonly solve: SolveAim;
  readonly play: PlayAim;
  readonly trace: TraceCueBall;
  readonly nearestSpeed: NearestSpeed;
  readonly goes: GoesAsMeant;
  /** See {@link createFrameGate}. */
  readonly nextFrame: (work: () => void) => void;
  readonly frameTime: () => unknown;
  /** As the present shot sees it. */
  readonly kit: ReadonlySignal<Kit>;
  /** Whether that stands, with nothing under way that would change it. */
  readonly isKitSettled: ReadonlySignal<boolean>;
  /** As a shot with this heading sees it: see {@link LaidShot}. */
  readonly kitAlong: (headingRad: number | null) => Kit;
  /** Nose to nose, of the table in play. */
  readonly tableLengthM: ReadonlySignal<number>;
  /** For speeds told in lengths; null until it has come. */
  readonly tableRuns: ReadonlySignal<TableRuns | null>;
  readonly desk: Pick<
    DeskModel,
    | 'shot'
    | 'heldShot'
    | 'preferences'
    | 'pocket'
    | 'setShot'
    | 'setPocket'
    | 'holdShot'
    | 'dropHeldShot'
  >;
}
