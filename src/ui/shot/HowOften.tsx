import type { Chance } from '../../engine/room/chance';
import type { RoomForError } from '../../engine/room/room-for-error';
import type { Models } from '../app-models';
import { easeWords, type Telling, tellingOf } from '../chance-telling';
import { AskOnce } from '../player/AskOnce';
import { forWords } from '../player/player-words';
import { chanceWords } from './room-words';
import { WhyRow } from './WhyRow';

/** How often the shot goes, for whom, and how often it would if the kit were known. */
export function HowOften({
  app,
  assessed,
}: {
  app: Models<'room' | 'player' | 'kit'>;
  assessed: RoomForError;
}) {
  const telling = tellingOf(app);
  const whom = telling === 'figures' ? forWords(app.player.inPlay.value) : 'most players';
  return (
    <>
      <h3>How often it goes for {whom}</h3>
      <dl class="why-list">
        <ChanceRow
          term="With this kit as far as it is known"
          chance={assessed.chance}
          telling={telling}
        />
        <ChanceRow
          term="If your kit were known"
          chance={assessed.chanceOnKnownKit}
          telling={telling}
        />
      </dl>
      <AskOnce app={app} />
      <p class="why-note">
        Tries drawn from the player’s scatter
        {telling === 'figures' && '; the ± is that of the drawing'}. A pocket is a gap of that width
        square to the ball’s way: no jaws, no rails.
      </p>
    </>
  );
}

interface RowProps {
  readonly term: string;
  readonly chance: Chance;
  readonly telling: Telling;
}

function ChanceRow({ term, chance: { share, error }, telling }: RowProps) {
  return (
    <WhyRow term={term}>
      {telling === 'figures' ? (
        <>
          <b>{chanceWords(share)}</b> ({Math.round(share * 100)} ± {Math.ceil(error * 100)} %)
        </>
      ) : (
        <b>{easeWords(share)}</b>
      )}
    </WhyRow>
  );
}
