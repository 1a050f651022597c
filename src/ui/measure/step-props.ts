import type { Signal } from '@preact/signals';
import type { TrialStep } from '../../state/measure/trial-steps';
import type { Attempt } from '../../store/attempt';
import type { LaterModels } from '../app-models';
import type { MeasureSession } from './measure-session';

/** What every control of a step hangs on. */
export interface StepProps {
  readonly app: LaterModels<'kit' | 'measure' | 'awake' | 'desk'>;
  readonly session: MeasureSession;
  readonly attempt: Attempt;
  readonly step: TrialStep;
  /** One line on what could not be taken, or empty. */
  readonly problem: Signal<string>;
}
