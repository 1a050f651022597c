import type { ComponentChildren } from 'preact';

interface Props {
  readonly name: string;
  readonly note: string;
  /** Before the name. */
  readonly picture?: ComponentChildren;
  readonly isChosen: boolean;
  readonly actions: readonly RecordActionSpec[];
  /** Between the name and what can be done. */
  readonly children?: ComponentChildren;
  onChoose(): void;
}

/** One of a list of what is kept: a tap chooses it, and beneath stands what else can be done. */
export function RecordRow(props: Props) {
  const { name, note, picture, isChosen, actions, children, onChoose } = props;
  return (
    <li>
      <button
        type="button"
        class={picture ? 'button record-choose has-picture' : 'button record-choose'}
        aria-pressed={isChosen}
        onClick={() => onChoose()}
      >
        {picture}
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

interface RecordActionSpec {
  readonly label: string;
  /** The same as it is read aloud before the name. */
  readonly spoken?: string;
  /** The panel it opens, for the focus to come back to. */
  readonly opens?: string;
  /** Whether what it shows is shown, where it shows something. */
  readonly isExpanded?: boolean;
  onTap(): void;
}

/** Something that can be done to one of a list; read aloud with its name. */
function RecordAction({
  name,
  label,
  spoken = label,
  opens,
  isExpanded,
  onTap,
}: RecordActionSpec & { readonly name: string }) {
  return (
    <button
      type="button"
      class="button"
      aria-label={`${spoken} ${name}`}
      aria-expanded={isExpanded}
      data-opens={opens}
      onClick={() => onTap()}
    >
      {label}
    </button>
  );
}
