import type { ReadonlySignal } from '@preact/signals';
import type { FitReport, ToGo } from '../../engine/fit/fit-report';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { TrialName, TrialShot } from '../../engine/fit/trials/trials';
import type { Attempt } from '../../store/attempt';
import type { Named, ShelfName } from '../../store/records';
import type { EditResult } from '../edit-result';
import type { AimGain } from './aim-gain';
import type { AttemptProgress } from './attempt-progress';
import type { KnownKit } from './create-known-kit';
import type { Foreseen } from './foresight';

/** One trial of the list: the shot of it that would teach most, and how many were done. */
export interface TrialOffer {
  readonly trial: TrialName;
  readonly shot: TrialShot;
  readonly done: number;
}

/** What was measured of the kit in play, and the measuring itself. */
export interface MeasureModel extends KnownKit {
  /** The newest one not finished, of any kit; null where there is none. */
  readonly unfinished: ReadonlySignal<AttemptProgress | null>;
  /** The last report worked out, null before the first. */
  readonly report: ReadonlySignal<FitReport | null>;
  /** Whether the report is that of the readings, kit and player as they are now. */
  readonly isFresh: ReadonlySignal<boolean>;
  /** The readings of the attempt asked about beside what was expected before them; null as yet. */
  readonly foreseen: ReadonlySignal<Foreseen | null>;
  /** How many shots that count tell of a record as it is now, in play or not. */
  shotsReadOn(shelf: ShelfName, record: Named): number;
  /** Asks what was expected of an attempt before it was read. */
  foresee(id: string): void;
  /** What is left until the aim of the present shot is good enough; null: not worked out of this shot. */
  readonly toGo: ReadonlySignal<ToGo | null>;
  /** What the readings since did to the aim of the present shot; null where it has none. */
  aimGain(earlier: KitKnowledge): AimGain | null;
  /** Every trial, the one to do next first: it serves {@link toGo} as long as anything is to go. */
  readonly offers: ReadonlySignal<readonly TrialOffer[]>;
  /** The last attempt removed, while {@link restore} can bring it back. */
  readonly lastDeleted: ReadonlySignal<Attempt | null>;
  /** Why no attempt can be begun, in one line; null where one can. */
  readonly crowded: ReadonlySignal<string | null>;
  /** One line on what could not be saved or worked out, or null. */
  readonly problem: ReadonlySignal<string | null>;
  progress(id: string): AttemptProgress | null;
  /** How long the cue of an attempt is taken to be, m: as measured with it before, or as usual. */
  cueLengthM(id: string): number;
  /** How high above the cloth the middle of the butt is to be raised for an attempt, m. */
  buttHeightM(id: string): number | null;
  /** The elevation that a butt's height tells, rad, where it is far from the one asked for. */
  elevationFarOff(id: string, buttHeightM: number): number | null;
  /** Says how long the cue of an attempt is, m. */
  setCueLength(id: string, lengthM: number): EditResult;
  /** Begins an attempt, kept from now on, and returns its id. */
  begin(shot: TrialShot): string;
  /** Keeps what stands on the keypad. */
  type(id: string, text: string): void;
  /** Does a step that asks for nothing. */
  finishStep(id: string): EditResult;
  /** Does the step by a number in SI units; of `butt`, the height above the cloth in m. */
  enter(id: string, value: number): EditResult;
  /** Takes the last step done back; what it read is on the keypad again. */
  stepBack(id: string): EditResult;
  /** Leaves an attempt out of the fit, or takes it in again. */
  strikeOut(id: string, isStruckOut: boolean): EditResult;
  remove(id: string): EditResult;
  /** Puts {@link lastDeleted} back. */
  restore(): EditResult;
}
