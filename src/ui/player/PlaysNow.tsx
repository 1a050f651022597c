import type { Models } from '../app-models';

/** That whoever was just added plays now, and a tap to have it as it was. */
export function PlaysNow({ app: { player } }: { app: Models<'player'> }) {
  const added = player.lastAdded.value;
  const now = player.inPlay.value;
  const before = added && added.id === now.id ? player.find(added.beforeId) : null;
  return (
    <output class="undo-delete">
      {before && (
        <>
          <span>{now.name} plays now.</span>
          <button type="button" class="button" onClick={() => player.choose(before.id)}>
            Back to {before.name}
          </button>
        </>
      )}
    </output>
  );
}
