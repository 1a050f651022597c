import type { Chance } from '../../engine/room/chance';
import type { RoomModel } from '../../state/room-model';
import type { Models } from '../app-models';
import { easeWords, type Telling, tellingOf } from '../chance-telling';
import { AskOnce } from '../player/AskOnce';
import { forWords } from '../player/player-words';
import { chanceWords, rangeOfTen } from './room-words';
import { WhyRow } from './WhyRow';

type Assessed = NonNullable<RoomModel['room']['value']>;

/** How often the shot goes, for whom, and how often it would if the kit were known. */
export function HowOften({
  app,
  assessed,
}: {
  app: Models<'room' | 'player' | 'kit'>;
  assessed: Assessed;
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
      {telling === 'figures' && <RangeNote range={assessed.range} />}
      <AskOnce app={app} />
      <p class="why-note">
        Tries drawn from the player’s scatter
        {telling === 'figures' && '; the ± is that of the drawing'}. A pocket is a gap of that width
        square to the ball’s way: no jaws, no rails.
      </p>
    </>
  );
}

/** How far the chance may be off for what is not known of who plays. */
function RangeNote({ range }: Pick<Assessed, 'range'>) {
  const ends = rangeOfTen(range);
  if (ends === null) return null;
  return (
    <p class="why-note">
      Nine times in ten it is from {ends[0]} to {ends[1]} in 10: shots logged and a measured cue
      narrow that.
    </p>
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
