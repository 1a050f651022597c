import type { AttemptProgress } from '../../state/measure/attempt-progress';
import { dayWords } from '../../units/ago-words';
import type { LaterModels } from '../app-models';
import { Paged } from '../controls/Paged';
import { DeletedNews } from '../kit/DeletedNews';
import { useProblem } from '../use-problem';
import { ReadingRows } from './ReadingRows';
import { shotName } from './trial-words';
import './AttemptList.css';

/** Everything that was taken down, the newest first, each reading beside what the fit expects. */
export function AttemptList({
  app,
}: {
  app: LaterModels<'measure' | 'nowMs' | 'desk' | 'router'>;
}) {
  const { measure, desk } = app;
  const [problem, tell] = useProblem();
  const attempts = measure.attempts.value;
  const deleted = measure.lastDeleted.value;
  return (
    <section class="measure-part" aria-labelledby="taken-down">
      <h2 id="taken-down">Taken down</h2>
      <DeletedNews
        words={
          deleted ? `${shotName(deleted.shot, desk.preferences.value.lengthUnit)} is deleted.` : ''
        }
        onPutBack={() => tell(measure.restore())}
      >
        {problem.value || measure.crowded.value}
      </DeletedNews>
      {attempts.length === 0 ? (
        <p class="place-note">No attempts with this kit yet.</p>
      ) : (
        <p class="place-note">
          Each bar: the middle is what all readings say, within the band lie nineteen of twenty. ●
          counts, ○ is doubtful.
        </p>
      )}
      <Paged label="Taken down" items={attempts}>
        {(shown) => (
          <ul class="attempt-list">
            {shown.map((progress) => (
              <AttemptRow
                key={progress.attempt.id}
                app={app}
                progress={progress}
                onDelete={() => tell(measure.remove(progress.attempt.id))}
              />
            ))}
          </ul>
        )}
      </Paged>
    </section>
  );
}

interface RowProps {
  readonly app: LaterModels<'measure' | 'nowMs' | 'desk' | 'router'>;
  readonly progress: AttemptProgress;
  onDelete(): void;
}

function AttemptRow({ app, progress: { attempt, now }, onDelete }: RowProps) {
  const { measure, desk, nowMs } = app;
  const report = measure.report.value?.shots.find(({ id }) => id === attempt.id) ?? null;
  const name = shotName(attempt.shot, desk.preferences.value.lengthUnit);
  const day = dayWords(attempt.startedAtMs, nowMs());
  const isDoubtful = report?.isDoubtful === true && !attempt.isStruckOut;
  return (
    <li class={attempt.isStruckOut ? 'is-struck-out' : undefined}>
      <p class="attempt-name">
        <b>{name}</b> <span class="shelf-origin">{day}</span>
      </p>
      {attempt.isStruckOut && <p class="attempt-state">✕ struck out: does not count</p>}
      {isDoubtful && <p class="attempt-state">○ doubtful: it looks like a slip</p>}
      {now !== null && <p class="attempt-state">… not finished</p>}
      <ReadingRows
        app={app}
        attempt={attempt}
        beside={attempt.isStruckOut ? [] : (report?.readings ?? [])}
        isDoubtful={isDoubtful}
        expectedWord="all readings say"
      />
      <div class="record-actions">
        {now === null ? (
          <button
            type="button"
            class="button"
            aria-label={`${attempt.isStruckOut ? 'Take back in' : 'Strike out'}: ${name}, ${day}`}
            onClick={() => measure.strikeOut(attempt.id, !attempt.isStruckOut)}
          >
            {attempt.isStruckOut ? 'Take back in' : 'Strike out'}
          </button>
        ) : (
          <button
            type="button"
            class="button"
            aria-label={`Go on: ${name}, ${day}`}
            onClick={() => app.router.open(`measure/${attempt.id}`)}
          >
            Go on
          </button>
        )}
        <button
          type="button"
          class="button is-grave"
          aria-label={`Delete ${name}, ${day}`}
          onClick={() => onDelete()}
        >
          Delete
        </button>
      </div>
    </li>
  );
}
