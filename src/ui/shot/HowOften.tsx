import type { Chance } from '../../engine/room/chance';
import type { RoomForError } from '../../engine/room/room-for-error';
import type { Models } from '../app-models';
import { PlayerChoice } from '../PlayerChoice';
import { chanceWords } from './room-words';
import { WhyRow } from './WhyRow';

/** How often the shot goes, for whom, and how often it would if the kit were known. */
export function HowOften({
  app,
  assessed,
}: {
  app: Models<'room' | 'desk'>;
  assessed: RoomForError;
}) {
  return (
    <>
      <h3>How often it goes</h3>
      <dl class="why-list">
        <ChanceRow term="With this kit as far as it is known" chance={assessed.chance} />
        <ChanceRow term="If your kit were known" chance={assessed.chanceOnKnownKit} />
      </dl>
      <PlayerChoice app={app} />
      <p class="why-note">
        Tries drawn from the player’s scatter; the ± is that of the drawing. A pocket is a gap of
        that width square to the ball’s way: no jaws, no rails.
      </p>
    </>
  );
}

function ChanceRow({ term, chance: { share, error } }: { term: string; chance: Chance }) {
  return (
    <WhyRow term={term}>
      <b>{chanceWords(share)}</b> ({Math.round(share * 100)} ± {Math.ceil(error * 100)} %)
    </WhyRow>
  );
}
