import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import './KitLists.css';

interface Props {
  readonly name: string;
  readonly note: string;
  /** Before the name. */
  readonly picture?: ComponentChildren;
  /** The figure that tells it from the others, and what it is of. */
  readonly figure?: readonly [string, string];
  readonly isChosen: boolean;
  /** The panel that a tap opens, for the focus to come back to; left out: it chooses. */
  readonly opens?: string;
  readonly actions: readonly RecordActionSpec[];
  /** Between the name and what can be done. */
  readonly children?: ComponentChildren;
  onChoose(): void;
}

/** One of a list of what is kept: a tap chooses it; what else can be done lies behind a button. */
export function RecordRow(props: Props) {
  const { name, note, picture, figure, isChosen, actions, children, onChoose } = props;
  const isOpen = useSignal(false);
  const actionsId = useId();
  const opens = actions.find((action) => action.opens !== undefined)?.opens;
  return (
    <li class={isChosen ? 'record-row is-chosen' : 'record-row'}>
      <button
        type="button"
        class={picture ? 'record-choose has-picture' : 'record-choose'}
        aria-pressed={props.opens === undefined ? isChosen : undefined}
        data-opens={props.opens}
        onClick={() => onChoose()}
      >
        {picture}
        <span class="record-words">
          <b>{name}</b>{' '}
          {figure && (
            <span class="record-figure">
              <strong>{figure[0]}</strong> {figure[1]}
            </span>
          )}{' '}
          <span class="record-origin">
            {isChosen && <span aria-hidden="true">● </span>}
            {note}
          </span>
        </span>
      </button>
      <button
        type="button"
        class="record-more"
        aria-label={`More: ${name}`}
        aria-expanded={isOpen.value}
        aria-controls={isOpen.value ? actionsId : undefined}
        data-opens={opens}
        onClick={() => {
          isOpen.value = !isOpen.peek();
        }}
      >
        <span aria-hidden="true">{isOpen.value ? '×' : '⋯'}</span>
      </button>
      {isOpen.value && (
        <div class="record-actions" id={actionsId} ref={bringInSight}>
          {actions.map((action) => (
            <RecordAction key={action.label} name={name} {...action} />
          ))}
        </div>
      )}
      {children}
    </li>
  );
}

/** What a tap opens below the last row would stay under the edge. */
const bringInSight = (opened: Element | null) => opened?.scrollIntoView({ block: 'nearest' });

interface RecordActionSpec {
  readonly label: string;
  /** The same as it is read aloud before the name. */
  readonly spoken?: string;
  /** The panel it opens, for the focus to come back to. */
  readonly opens?: string;
  /** Whether what it shows is shown, where it shows something. */
  readonly isExpanded?: boolean;
  /** It takes something away, and keeps its distance from the others. */
  readonly isGrave?: boolean;
  onTap(): void;
}

/** Something that can be done to one of a list; read aloud with its name. */
function RecordAction({
  name,
  label,
  spoken = label,
  isExpanded,
  isGrave = false,
  onTap,
}: RecordActionSpec & { readonly name: string }) {
  return (
    <button
      type="button"
      class={isGrave ? 'button is-grave' : 'button'}
      aria-label={`${spoken} ${name}`}
      aria-expanded={isExpanded}
      onClick={() => onTap()}
    >
      {label}
    </button>
  );
}
