/** What was deleted, in words, and a way to take it back; nothing where the words are empty. */
export function DeletedNews({ words, onPutBack }: { words: string; onPutBack: () => void }) {
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
    </output>
  );
}
