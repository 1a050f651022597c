import { useComputed } from '@preact/signals';
import type { Refusal } from '../../engine/direct/shot';
import { formatQuantity } from '../../units/format-number';
import { refusalWords, remedyWords } from '../../words/refusal-words';
import type { Models } from '../app-models';
import { useSettled } from '../use-settled';
import { AnswerLead } from './AnswerLead';
import { AnswerMeaning } from './AnswerMeaning';
import { type AnswerReadings, answerInWords, answerReadings } from './answer-words';
import { staleNote } from './picture-words';
import { ReadingLine } from './ReadingLine';
import { isRoomStale } from './room-of-field';
import { roomSummary } from './room-summary';
import './AnswerBlock.css';

/** Where to point the cue; or why nowhere will do, over the last answer there was. */
export function AnswerBlock({
  app,
}: {
  app: Models<'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk'>;
}) {
  const model = app.shot;
  const last = model.lastAnswer.value;
  const result = model.result.value;
  const preferences = app.desk.preferences.value;
  const isSettled = app.measure.isSettled.value;
  const readings = last && answerReadings(last.answer, last.kit.ballRadiusM, preferences);
  return (
    <section class="answer" aria-label="Where to aim">
      {!result.ok && isSettled && <RefusalLines app={app} refusal={result} />}
      {!readings && !isSettled && <p class="stale-note">{staleNote(app)}</p>}
      {readings && (
        <div class={model.stale.value ? 'answer-figures is-stale' : 'answer-figures'}>
          {model.stale.value && <p class="stale-note">{staleNote(app)}</p>}
          {result.ok ? (
            <details class="answer-fold">
              <summary>
                <AnswerLead reading={readings.lead} />
                <span class="answer-more">
                  <span>figures</span>
                </span>
              </summary>
              <Figures readings={readings} />
            </details>
          ) : (
            <AnswerLead reading={readings.lead} />
          )}
          {result.ok && <AnswerMeaning app={app} />}
        </div>
      )}
      <SpokenAnswer app={app} />
    </section>
  );
}

/** The same line told the other ways, its angle, and where the stick passes. */
function Figures({ readings }: { readings: AnswerReadings }) {
  const { aims, angle, stick } = readings;
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

function RefusalLines({ app, refusal }: { app: Models<'shot'>; refusal: Refusal }) {
  return (
    <div class="refusal">
      <p class="refusal-message">
        <span aria-hidden="true">⊘</span> {refusalWords(refusal).message}
      </p>
      <p class="refusal-remedy">{remedyWords(refusal, app.shot.remedySpeed.value)}</p>
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
function SpokenAnswer({
  app,
}: {
  app: Models<'shot' | 'room' | 'player' | 'kit' | 'measure' | 'desk'>;
}) {
  const { shot, kit, desk, measure } = app;
  const words = useComputed(() => {
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
