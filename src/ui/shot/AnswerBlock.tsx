import { type ReadonlySignal, useComputed, useSignal } from '@preact/signals';
import { formatQuantity } from '../../units/format-number';
import { refusalWords, remedyWords } from '../../words/refusal-words';
import type { Models } from '../app-models';
import { useSettled } from '../use-settled';
import { useSteady } from '../use-steady';
import { AnswerLead } from './AnswerLead';
import { AnswerMeaning } from './AnswerMeaning';
import { type AnswerReadings, answerInWords, answerReadings } from './answer-words';
import { staleNote } from './picture-words';
import { ReadingLine } from './ReadingLine';
import { isRoomStale } from './room-of-field';
import { roomSummary } from './room-summary';
import { useRested } from './use-rested';
import { useSeen } from './use-seen';
import './AnswerBlock.css';

type AnswerModels = Models<'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk'>;

/** Where to point the cue; or why nowhere will do, over the last answer there was. */
export function AnswerBlock({ app }: { app: AnswerModels }) {
  const model = app.shot;
  const isAnswered = useComputed(() => model.result.value.ok).value;
  const isThere = useComputed(() => model.lastAnswer.value !== null).value;
  const isSettled = app.measure.isSettled.value;
  return (
    <section class="answer" aria-label="Where to aim">
      {!isAnswered && isSettled && <RefusalLines app={app} />}
      {!isThere && !isSettled && <p class="stale-note">{staleNote(app)}</p>}
      {isThere && (
        <div class={model.stale.value ? 'answer-figures is-stale' : 'answer-figures'}>
          {model.stale.value && <p class="stale-note">{staleNote(app)}</p>}
          {isAnswered ? <Fold app={app} /> : <Lead app={app} />}
          {isAnswered && <AnswerMeaning app={app} />}
        </div>
      )}
      <SpokenAnswer app={app} />
    </section>
  );
}

function readingsOf({ shot, desk }: Models<'shot' | 'desk'>): AnswerReadings | null {
  const last = shot.lastAnswer.value;
  return last && answerReadings(last.answer, last.kit.ballRadiusM, desk.preferences.value);
}

function Lead({ app }: { app: AnswerModels }) {
  const lead = useSteady(() => readingsOf(app)?.lead).value;
  return lead ? <AnswerLead reading={lead} /> : null;
}

/**
 * The answer, and under it the figures. While nobody sees them they wait: for the frame that shows the
 * answer, and for the hand.
 */
function Fold({ app }: { app: AnswerModels }) {
  const isOpen = useSignal(false);
  const rested = useRested(app.shot, () => readingsOf(app));
  const readings = useComputed(() => (isOpen.value ? readingsOf(app) : rested.value));
  const isSeen = useSeen();
  return (
    <details
      class="answer-fold"
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        <Lead app={app} />
        <span class="answer-more">
          <span>figures</span>
        </span>
      </summary>
      {isSeen && <Figures readings={readings} />}
    </details>
  );
}

/** The same line told the other ways, its angle, and where the stick passes. */
function Figures({ readings }: { readings: ReadonlySignal<AnswerReadings | null> }) {
  if (!readings.value) return null;
  const { aims, angle, stick } = readings.value;
  return (
    <ul class="answer-others">
      {[...aims, angle, stick].map(({ label, reading }) => (
        <li key={label} class={label === 'object ball' ? 'is-long' : undefined}>
          <span class="answer-label">{label}</span> <ReadingLine reading={reading} />
        </li>
      ))}
    </ul>
  );
}

function RefusalLines({ app }: { app: AnswerModels }) {
  const result = app.shot.result.value;
  if (result.ok) return null;
  return (
    <div class="refusal">
      <p class="refusal-message">
        <span aria-hidden="true">⊘</span> {refusalWords(result).message}
      </p>
      <p class="refusal-remedy">{remedyWords(result, app.shot.remedySpeed.value)}</p>
      <SpeedRemedy app={app} />
    </div>
  );
}

/** The remedy as one tap, where another speed is one. */
function SpeedRemedy({ app: { shot } }: { app: Models<'shot'> }) {
  const speed = shot.remedySpeed.value;
  if (speed === null) return null;
  return (
    <button
      type="button"
      class="button button-main remedy-button"
      onClick={() => shot.setFigure('speed', speed)}
    >
      Play {formatQuantity(speed, shot.fields.speed.value.facts)}
    </button>
  );
}

/** Says the answer once it has stood still, so that holding a button does not flood the ear. */
function SpokenAnswer({ app }: { app: AnswerModels }) {
  const { shot, kit, desk, measure } = app;
  const words = useRested(app.shot, () => {
    const result = shot.result.value;
    if (!measure.isSettled.value) return '';
    if (!result.ok)
      return `${refusalWords(result).message} ${remedyWords(result, shot.remedySpeed.value)}`;
    if (shot.stale.value) return '';
    const { ballRadiusM } = kit.kit.value;
    const answer = answerInWords(answerReadings(result, ballRadiusM, desk.preferences.value));
    const { problem } = app.room;
    if (problem.value !== null) return `${answer} ${problem.value}`;
    const room = isRoomStale(app) ? null : roomSummary(app);
    return room ? `${answer} It ${room.spoken}; ${room.certainty}.` : answer;
  });
  const settled = useSettled(words);
  return <output class="visually-hidden">{settled.value}</output>;
}
