import { surenessOf } from '../../state/measure/sureness';
import type { LaterModels } from '../app-models';
import { InstallHint } from '../install/InstallHint';
import { PanelHeader } from '../kit/PanelHeader';
import { AttemptList } from './AttemptList';
import { ageLines } from './age-lines';
import { adviceWords } from './knowledge-words';
import { NextShot } from './NextShot';
import { SurenessList } from './SurenessList';
import { TrialRows } from './TrialRows';
import { shotName } from './trial-words';

/** What to do next, what is known of the kit in play, and all that was taken down. */
export function MeasurePage({
  app,
}: {
  app: LaterModels<'kit' | 'measure' | 'nowMs' | 'install' | 'desk' | 'router'>;
}) {
  const { measure, router } = app;
  return (
    <>
      <PanelHeader router={router} title="Measure" />
      <UnfinishedRow app={app} />
      <NextShot app={app} />
      <TrialRows app={app} />
      <InstallHint app={app} />
      <section class="measure-part" aria-labelledby="how-sure">
        <h2 id="how-sure">How sure now</h2>
        <p class="place-note">
          Thin: assumed. Thick: measured. Two times in three the true figure lies within the bar.
        </p>
        <SurenessList
          rows={surenessOf(measure.before.value, measure.knowledge.value)}
          unit={app.desk.preferences.value.lengthUnit}
        />
        <Age app={app} />
        <p class="place-problem measure-status" role="status">
          {measure.problem.value ?? (measure.isFresh.value ? '' : 'Working out the readings…')}
        </p>
      </section>
      <AdviceLines app={app} />
      <AttemptList app={app} />
    </>
  );
}

function Age({ app }: { app: LaterModels<'measure' | 'nowMs'> }) {
  const { measure, nowMs } = app;
  const lines = ageLines(measure.attempts.value, measure.measured.value, nowMs());
  if (lines.length === 0 && !measure.isSettled.value) return null;
  if (lines.length === 0) return <p class="place-note">Nothing of this kit is measured yet.</p>;
  return (
    <ul class="age-lines">
      {lines.map(({ text, isStale }) => (
        <li key={text}>
          {isStale && (
            <>
              <span aria-hidden="true">⚠</span>{' '}
            </>
          )}
          {text}
        </li>
      ))}
    </ul>
  );
}

function AdviceLines({ app }: { app: LaterModels<'measure'> }) {
  const advice = app.measure.report.value?.advice ?? [];
  if (advice.length === 0 || app.measure.attempts.value.length === 0) return null;
  return (
    <section class="measure-part" aria-labelledby="measure-advice">
      <h2 id="measure-advice">What would help</h2>
      <ul class="advice-lines">
        {[...new Set(advice.map(adviceWords))].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** The way back into an attempt that was left. */
function UnfinishedRow({
  app: { measure, router, desk },
}: {
  app: LaterModels<'measure' | 'desk' | 'router'>;
}) {
  const unfinished = measure.unfinished.value;
  if (!unfinished?.now) return null;
  const { attempt, steps, now } = unfinished;
  const name = shotName(attempt.shot, desk.preferences.value.lengthUnit);
  return (
    <button
      type="button"
      class="button button-main unfinished"
      data-opens={`measure/${attempt.id}`}
      onClick={() => router.open(`measure/${attempt.id}`)}
    >
      Go on: {name}, step {steps.indexOf(now) + 1} of {steps.length}
    </button>
  );
}
