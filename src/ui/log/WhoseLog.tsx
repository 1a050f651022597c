import type { Models } from '../app-models';
import { Choices } from '../controls/Choices';

/** More names would hide the log. */
const MOST_NAMES = 8;

/** Whose log is shown, and others a tap away: whoever is chosen plays. */
export function WhoseLog({ app: { player, router } }: { app: Models<'player' | 'router'> }) {
  const all = player.players.value;
  const mine = player.inPlay.value;
  const others = all.filter(({ id }) => id !== mine.id);
  const near = all.length > MOST_NAMES ? [mine, ...others.slice(0, MOST_NAMES - 1)] : all;
  return (
    <div class="whose-log">
      {all.length > 1 && (
        <Choices
          label="Whose log"
          items={near.map(({ id, name }) => ({ value: id, content: name }))}
          isChosen={(id) => id === mine.id}
          onChoose={(id) => player.choose(id)}
        />
      )}
      <button type="button" class="button" onClick={() => router.visit('kit', 'players')}>
        {all.length > 1 ? 'All players' : `Player: ${mine.name}`} <span aria-hidden="true">›</span>
      </button>
    </div>
  );
}
