import { layOutLimits } from '../../diagram/practice-bar';
import type { Limits } from '../../engine/player/limits';
import type { Models } from '../app-models';
import { capitalised } from '../choose/table-words';
import { LIMIT_WORDS, limitsInOrder, limitsLine, ofTenWords } from './practice-words';

interface Props {
  readonly app: Models<'player'>;
  readonly limits: Limits;
}

/** What limits whoever plays, in one sentence, and three bars beside each other. */
export function LimitBars({ app: { player }, limits }: Props) {
  const shares = layOutLimits(limits);
  return (
    <>
      <p>{limitsLine(limits, player.inPlay.value)}</p>
      <ul class="limit-bars" aria-label="How many more of ten, were it half as far off">
        {limitsInOrder(limits).map((limit) => (
          <li key={limit}>
            <span>{capitalised(LIMIT_WORDS[limit])}</span>
            <svg class="limit-bar" aria-hidden="true">
              <rect class="limit-track" width="100%" height="14" />
              <rect class="limit-gain" width={`${100 * shares[limit]}%`} height="14" />
            </svg>
            <b>+{ofTenWords(limits.gains[limit])}</b>
          </li>
        ))}
      </ul>
      <p class="place-note">
        Made: the ball went in and, where there was a spot, the cue ball stopped on it.
        {!limits.isOwn && ' Until ten shots are logged, ordinary ones stand for yours.'}
        {limitsInOrder(limits)[0] === 'kit' && ' Measure, under Kit, tells more of the kit.'}
      </p>
    </>
  );
}
