import type { ComponentChildren, RefObject } from 'preact';
import { traitsOf } from '../../state/measure/trial-traits';
import { ButtDrawing } from './ButtDrawing';
import { buttTarget } from './butt-words';
import { openingUnit } from './entry-specs';
import { expectedFigure, expectedOf } from './expected-reading';
import { RaisedWarning } from './RaisedWarning';
import { railTouch } from './rail-touch';
import { StepControl } from './StepControl';
import { entryNameOf, entryTable } from './step-back';
import type { StepProps } from './step-props';
import { stepWords } from './step-words';
import { TipCard } from './TipCard';
import { TrialDrawing } from './TrialDrawing';
import { TrialLensDrawing } from './TrialLensDrawing';
import { FACES } from './trials/faces';
import { WayWord } from './WayWord';

interface Props extends StepProps {
  readonly heading: RefObject<HTMLHeadingElement | null>;
  /** "2 of 4". */
  readonly place: string;
  /** Of the shot. */
  readonly name: string;
  readonly foot: ComponentChildren;
}

/** What to do now: a drawing, a sentence or two, and one control under the thumb. */
export function AttemptStep(props: Props) {
  const { app, attempt, step, heading, place, name, problem, foot } = props;
  const { shot } = attempt;
  const words = stepWords(shot, step, {
    ballRadiusM: app.kit.kit.value.ballRadiusM,
    lengthUnit: app.desk.preferences.value.lengthUnit,
    buttHeight: buttTarget(app, attempt),
  });
  const { isRaised, isRolledByHand } = traitsOf(shot.trial);
  const isRaisedNow = isRaised && step.name === 'place';
  const isSetUp = step.kind === 'done' || step.kind === 'taps';
  const isLens = step.name === 'place' && FACES[shot.trial].lens !== undefined;
  const showsTip = isSetUp && !isRolledByHand && !isLens;
  return (
    <section class="attempt" aria-label={name}>
      <header class="attempt-head">
        <h1 ref={heading} tabIndex={-1}>
          {words.title}
        </h1>
        <p class="attempt-place">
          Step {place} <span aria-hidden="true">·</span> {name}
        </p>
      </header>
      <p class="attempt-text">
        {words.text}
        <Expected {...props} />
      </p>
      <div class={showsTip || isLens ? 'attempt-picture has-tip' : 'attempt-picture'}>
        {step.name === 'butt' ? (
          <ButtDrawing app={app} attempt={attempt} />
        ) : (
          <TrialDrawing app={app} shot={shot} step={step.name} rail={railTouch(props)} />
        )}
        {isLens && <TrialLensDrawing app={app} shot={shot} />}
        {showsTip && <TipCard app={app} shot={shot} />}
      </div>
      <div class="attempt-control">
        {isRaisedNow && <RaisedWarning />}
        <output class="attempt-problem">
          {problem.value !== '' && (
            <>
              <span aria-hidden="true">⚠</span> {problem.value}
            </>
          )}
          {app.measure.problem.value}
        </output>
        <StepControl {...props} done={words.done} />
        {app.awake.mayGoDark.value && isSetUp && (
          <p class="attempt-note">Your screen may go dark: tap it now and then.</p>
        )}
        {foot}
      </div>
    </section>
  );
}

/** What all readings so far lead to expect here, said before anything is entered. */
function Expected({ app, session, attempt, step }: Omit<StepProps, 'problem'>) {
  const expected = expectedOf(app.measure.report.value, attempt.shot, step);
  const name = entryNameOf(step.name);
  if (expected === null || name === null) return null;
  const preferences = app.desk.preferences.value;
  const unit = openingUnit(name, session.unit.value, preferences);
  const table = entryTable(app, attempt);
  const { figure, way } = expectedFigure(name, expected, unit, preferences, table);
  return (
    <span class="attempt-expected">
      {' '}
      Expected: {figure} <WayWord word={way} />
    </span>
  );
}
