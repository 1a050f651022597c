import type { ComponentChildren } from 'preact';
import { RecordAction, type RecordActionSpec } from './RecordAction';

interface Props {
  readonly name: string;
  readonly note: string;
  readonly isChosen: boolean;
  readonly actions: readonly RecordActionSpec[];
  /** Between the name and what can be done. */
  readonly children?: ComponentChildren;
  onChoose(): void;
}

/** One of a list of what is kept: a tap chooses it, and beneath stands what else can be done. */
export function RecordRow({ name, note, isChosen, actions, children, onChoose }: Props) {
  return (
    <li>
      <button
        type="button"
        class="button record-choose"
        aria-pressed={isChosen}
        onClick={() => onChoose()}
      >
        <span class="record-mark" aria-hidden="true">
          {isChosen ? '●' : '○'}
        </span>
        <b>{name}</b> <span class="record-origin">{note}</span>
      </button>
      {children}
      <div class="record-actions">
        {actions.map((action) => (
          <RecordAction key={action.label} name={name} {...action} />
        ))}
      </div>
    </li>
  );
}
