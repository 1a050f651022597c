import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { type Sureness, surenessOf } from '../../state/measure/sureness';
import { traitsOf } from '../../state/measure/trial-traits';
import type { Attempt } from '../../store/attempt';

import type { LaterModels, Models } from '../app-models';
import { RecordName } from '../kit/RecordName';
import { AimEffect } from './AimEffect';
import type { MeasureSession } from './measure-session';
import { OfferButton } from './OfferButton';
import { ReadingRows } from './ReadingRows';
import { doubtOf, SECOND_LOOK, verdictWords } from './reading-doubt';
import { SecondLook } from './SecondLook';
import { SurenessList } from './SurenessList';
import { ToShot } from './ToShot';
import { shotName } from './trial-words';

interface Props {
  readonly app: LaterModels<'kit' | 'measure' | 'desk' | 'router'>;
  readonly session: MeasureSession;
  readonly attempt: Attempt;
  /** Of the shot. */
  readonly name: string;
  readonly heading: RefObject<HTMLHeadingElement | null>;
  /** Takes the last step back. */
  onBack(): void;
}

/** What came of an attempt: its readings beside what was expected, and what is surer now. */
export function AttemptResult({ app, session, attempt, name, heading, onBack }: Props) {
  const { measure, router } = app;
  const report = measure.report.value?.shots.find(({ id }) => id === attempt.id) ?? null;
  const foreseen = measure.foreseen.value;
  useEffect(() => measure.foresee(attempt.id), [measure, attempt.id]);
  const opened = session.opened.value?.id === attempt.id ? session.opened.value : null;
  const earlier = opened?.knowledge ?? measure.before.value;
  const beside = report && foreseen?.id === attempt.id ? foreseen.readings : [];
  const doubt = doubtOf(report, beside, attempt);
  return (
    <section class="attempt-result" aria-label={name}>
      <header class="attempt-head">
        <h1 ref={heading} tabIndex={-1}>
          Taken down
        </h1>
        <p class="attempt-place">{name}</p>
      </header>
      <output class="attempt-verdict">
        {measure.isFresh.value ? verdictWords(doubt) : 'Working out what it tells…'}
      </output>
      {SECOND_LOOK.includes(doubt) && <SecondLook app={app} attempt={attempt} />}
      {measure.isFresh.value && report && (
        <AimEffect app={app} earlier={earlier} before={opened?.toGo?.shots} />
      )}
      <ReadingRows
        app={app}
        attempt={attempt}
        beside={beside}
        isDoubtful={report?.isDoubtful ?? false}
        expectedWord="expected"
      />
      {measure.isFresh.value && (
        <>
          <h2>What it taught</h2>
          <Taught app={app} earlier={earlier} now={measure.knowledge.value} />
        </>
      )}
      {report && <CueName app={app} attempt={attempt} />}
      <div class="attempt-control">
        <Onward app={app} />
        <div class="attempt-foot">
          <button type="button" class="button" onClick={onBack}>
            <span aria-hidden="true">↶</span> Not so: step back
          </button>
          <button type="button" class="button" onClick={() => router.close()}>
            To all trials
          </button>
        </div>
      </div>
    </section>
  );
}

/** Asks for a name at the first reading of a cue that began as an example. */
function CueName({ app, attempt: { shot } }: Pick<Props, 'app' | 'attempt'>) {
  const { kit, measure } = app;
  const cue = kit.current.cues.value;
  const isFirst =
    cue.origin === 'invented' &&
    traitsOf(shot.trial).tells.includes('cue') &&
    measure.shotsReadOn('cues', cue) === 1;
  return isFirst ? (
    <RecordName app={app} shelf="cues" record={cue} label="Your cue’s name" />
  ) : null;
}

/** Surer by less than this share is not worth a line. */
const LEAST_TAUGHT = 0.97;

interface TaughtProps {
  readonly app: Models<'desk'>;
  readonly earlier: KitKnowledge;
  readonly now: KitKnowledge;
}

function Taught({ app, earlier, now }: TaughtProps) {
  const rows = surenessOf(earlier, now)
    .filter(({ before, now: after }) => after.sd < LEAST_TAUGHT * before.sd)
    .map<Sureness>((row) => ({ ...row, isMeasured: true }));
  if (rows.length === 0) return <p class="place-note">Little that was not known before.</p>;
  return <SurenessList rows={rows} unit={app.desk.preferences.value.lengthUnit} since="earlier" />;
}

/** Back to the shot once its aim is sure enough; else on to what serves it, or teaches most. */
function Onward({ app }: { app: LaterModels<'measure' | 'desk' | 'router'> }) {
  const { measure } = app;
  const [best] = measure.offers.value;
  const isWorking = !measure.isFresh.value && measure.problem.value === null;
  const isReached = !isWorking && measure.toGo.value?.shots === 0;
  return (
    <>
      {isReached && <ToShot router={app.router} />}
      {best && (
        <OfferButton app={app} shot={best.shot} isMain={!isReached} isDisabled={isWorking}>
          Next: {shotName(best.shot, app.desk.preferences.value.lengthUnit)}
        </OfferButton>
      )}
    </>
  );
}
