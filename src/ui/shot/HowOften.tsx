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
  app: Models<'room' | 'player' | 'router'>;
  assessed: Assessed;
}) {
  const telling = tellingOf(app);
  const range = telling === 'figures' ? rangeOfTen(assessed.range) : null;
  const whom = telling === 'figures' ? forWords(app.player.inPlay.value) : 'most players';
  return (
    <>
      <h3>How often it goes for {whom}</h3>
      <dl class="why-list">
        <ChanceRow
          term="With this kit as far as it is known"
          chance={assessed.chance}
          telling={telling}
          range={range}
        />
        <ChanceRow
          term="If your kit were known"
          chance={assessed.chanceOnKnownKit}
          telling={telling}
        />
      </dl>
      <WidthNote range={range} />
      <AskOnce app={app} panel="why/question" />
      <p class="why-note">
        Tries drawn from the player’s scatter. A pocket is a gap of that width square to the ball’s
        way: no jaws, no rails.
      </p>
    </>
  );
}

/** Whence the width of that chance comes, and what narrows it. */
function WidthNote({ range: ends }: Pick<RowProps, 'range'>) {
  if (!ends) return null;
  return (
    <p class="why-note">
      From {ends[0]} to {ends[1]} is for what is not known of the player yet: shots logged and a
      measured cue narrow it.
    </p>
  );
}

interface RowProps {
  readonly term: string;
  readonly chance: Chance;
  readonly telling: Telling;
  /** How far that may be off nine times in ten, of ten; null where that is not told. */
  readonly range?: ReturnType<typeof rangeOfTen>;
}

function ChanceRow({ term, chance: { share }, telling, range }: RowProps) {
  return (
    <WhyRow term={term}>
      <b>{telling === 'figures' ? chanceWords(share) : easeWords(share)}</b>
      {range && ` (${range[0]} to ${range[1]}, 9 chances in 10)`}
    </WhyRow>
  );
}
