import type { ComponentChildren } from 'preact';
import type { Gestures } from '../../state/history';
import { useHoldRepeat } from './use-hold-repeat';
import './HoldButton.css';

interface Props {
  readonly model: Gestures;
  readonly label: string;
  readonly isDisabled?: boolean;
  step(coarse: boolean): void;
  readonly children: ComponentChildren;
}

/** A big button that steps when pressed and keeps stepping while held. */
export function HoldButton({ model, label, isDisabled = false, step, children }: Props) {
  const handlers = useHoldRepeat({
    begin: () => model.beginGesture(true),
    step,
    end: (cancelled) => model.endGesture(cancelled),
  });
  return (
    <button
      type="button"
      class="button hold-button"
      aria-label={label}
      disabled={isDisabled}
      {...handlers}
    >
      {children}
    </button>
  );
}
