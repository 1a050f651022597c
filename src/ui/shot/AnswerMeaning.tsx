import { useRef } from 'preact/hooks';
import type { Models } from '../app-models';
import { uncorrectedWords } from './meaning-words';
import { isRoomStale } from './room-of-field';
import { roomSummary } from './room-summary';
import { useRested } from './use-rested';

type MeaningModels = Models<'shot' | 'room' | 'player' | 'desk'>;

/** What the answer means: how often it goes, what allowing for nothing would do, how sure it is. */
export function AnswerMeaning({ app }: { app: MeaningModels }) {
  const summary = useRested(app.shot, () => roomSummary(app)).value;
  const isWaiting = app.room.problem.value === null && (summary === null || isRoomStale(app));
  const pointed = usePointedWords(app, isWaiting);
  return (
    <p class={isWaiting ? 'answer-meaning is-stale' : 'answer-meaning'}>
      <b class="why-chance">
        {summary?.chance}
        {summary?.range && <span class="why-range">{summary.range}</span>}
      </b>
      {pointed && <span class="answer-pointed">. Pointed at the ghost ball it {pointed}.</span>}{' '}
      <span class="why-certainty">
        {summary?.certainty}
        {isWaiting && ' …'}
      </span>
    </p>
  );
}

/** Worked out once the hand rests, like the chance beside it, and left standing until then. */
function usePointedWords(app: MeaningModels, isWaiting: boolean): string {
  const words = useRef('');
  const now = useRested(app.shot, () => pointedWords(app));
  if (!isWaiting) words.current = now.value;
  return words.current;
}

function pointedWords({ shot, room }: Models<'shot' | 'room'>): string {
  const last = shot.lastAnswer.value;
  const result = shot.uncorrected.value;
  return last && result ? uncorrectedWords(result, last.shot.cutRad, room.allowedRad.value) : '';
}
