import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { AttemptProgress } from '../../state/measure/attempt-progress';
import type { LaterModels } from '../app-models';
import { AttemptResult } from './AttemptResult';
import { AttemptStep } from './AttemptStep';
import type { MeasureSession } from './measure-session';
import { stepBack } from './step-back';
import { shotName } from './trial-words';
import './AttemptScreen.css';

interface Props {
  readonly app: LaterModels<'kit' | 'measure' | 'awake' | 'desk' | 'router'>;
  readonly session: MeasureSession;
  readonly progress: AttemptProgress;
}

/** One attempt, one step a screen; then what came of it. The screen stays lit meanwhile. */
export function AttemptScreen({ app, session, progress }: Props) {
  const { attempt, steps, now } = progress;
  const { awake } = app;
  const heading = useFocusAt(`${attempt.id}/${now?.name ?? 'result'}`);
  const problem = useSignal('');
  useEffect(() => {
    awake.hold();
    return () => awake.release();
  }, [awake]);
  useEffect(() => {
    problem.value = '';
    if (now === null || session.opened.peek()?.id === attempt.id) return;
    const { knowledge, toGo } = app.measure;
    session.opened.value = { id: attempt.id, knowledge: knowledge.peek(), toGo: toGo.peek() };
  }, [app.measure, attempt.id, now, problem, session]);
  const name = shotName(attempt.shot, app.desk.preferences.value.lengthUnit);
  const back = () => {
    const undone = stepBack(app, session, progress);
    problem.value = undone.ok ? '' : undone.problem;
  };
  if (now === null) {
    return (
      <AttemptResult
        app={app}
        session={session}
        attempt={attempt}
        name={name}
        heading={heading}
        onBack={back}
      />
    );
  }
  return (
    <AttemptStep
      key={`${attempt.id}/${now.name}`}
      app={app}
      session={session}
      attempt={attempt}
      step={now}
      heading={heading}
      place={`${steps.indexOf(now) + 1} of ${steps.length}`}
      name={name}
      problem={problem}
      foot={
        <div class="attempt-foot">
          <button
            type="button"
            class="button"
            disabled={attempt.stepsDone.length === 0}
            onClick={back}
          >
            <span aria-hidden="true">↶</span> Step back
          </button>
          <button type="button" class="button" onClick={() => app.router.close()}>
            Leave it for later
          </button>
        </div>
      }
    />
  );
}

/** The heading of what has just come up gets the focus, unless something was typed into it. */
function useFocusAt(what: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (what !== '') heading.current?.focus({ preventScroll: true });
  }, [what]);
  return heading;
}
