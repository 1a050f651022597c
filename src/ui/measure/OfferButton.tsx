import type { ComponentChildren } from 'preact';
import type { TrialShot } from '../../engine/fit/trials/trials';
import { traitsOf } from '../../state/measure/trial-traits';
import type { LaterModels } from '../app-models';
import { RaisedWarning } from './RaisedWarning';

interface Props {
  readonly app: LaterModels<'measure' | 'router'>;
  readonly shot: TrialShot;
  readonly isMain?: boolean;
  readonly isDisabled?: boolean;
  readonly children: ComponentChildren;
}

/** Begins a shot of a trial; what it may do to the cloth is said where it is offered. */
export function OfferButton({ app, shot, isMain, isDisabled, children }: Props) {
  const { measure, router } = app;
  return (
    <>
      {traitsOf(shot.trial).isRaised && <RaisedWarning />}
      <button
        type="button"
        class={isMain ? 'button button-main' : 'button'}
        disabled={isDisabled || measure.crowded.value !== null}
        onClick={() => router.open(`measure/${measure.begin(shot)}`)}
      >
        {children}
      </button>
    </>
  );
}
