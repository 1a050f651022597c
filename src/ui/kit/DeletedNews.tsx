import type { ComponentChildren } from 'preact';

interface Props {
  /** What was deleted; empty where nothing is. */
  readonly words: string;
  onPutBack(): void;
  /** What else there is to say of the list. */
  readonly children?: ComponentChildren;
}

/** What was deleted from a list, and a way to take it back. */
export function DeletedNews({ words, onPutBack, children }: Props) {
  return (
    <output class="undo-delete">
      {words !== '' && (
        <>
          <span>{words}</span>
          <button type="button" class="button" onClick={() => onPutBack()}>
            <span aria-hidden="true">↶</span> Put it back
          </button>
        </>
      )}
      {children}
    </output>
  );
}
