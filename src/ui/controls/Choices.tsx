import type { ComponentChildren } from 'preact';
import './Choices.css';

export interface ChoiceItem<T> {
  readonly value: T;
  readonly content: ComponentChildren;
  /** Whether it cannot be had now, and only keeps its place. */
  readonly isOff?: boolean;
}

interface Props<T> {
  readonly label: string;
  /** Whether the label is also to be seen. */
  readonly isLabelShown?: boolean;
  readonly items: readonly ChoiceItem<T>[];
  isChosen(value: T): boolean;
  onChoose(value: T): void;
}

/** A row of buttons of which the one in force is filled. */
export function Choices<T extends string | number>({
  label,
  isLabelShown = false,
  items,
  isChosen,
  onChoose,
}: Props<T>) {
  return (
    <fieldset class="choices">
      <legend class={isLabelShown ? undefined : 'visually-hidden'}>{label}</legend>
      {items.map(({ value, content, isOff }) => (
        <button
          key={value}
          type="button"
          class="button"
          aria-pressed={isChosen(value)}
          disabled={isOff}
          onClick={() => onChoose(value)}
        >
          {content}
        </button>
      ))}
    </fieldset>
  );
}
