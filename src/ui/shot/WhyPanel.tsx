import type { ComponentChildren } from 'preact';
import type { AimAnswer, AimResult } from '../../engine/aim/shot';
import type { Answered } from '../../state/shot-model';
import { thrownAngleRad } from '../../state/thrown-angle';
import type { Preferences } from '../../store/records';
import { DISTANCE_UNITS, distanceInUnit } from '../../units/distance-unit';
import { formatQuantity } from '../../units/format-number';
import { SPEED_UNITS, speedInUnit } from '../../units/speed-unit';
import type { AppModels } from '../app-models';
import { angleReading, lengthReading } from './answer-words';
import { PartsChart } from './PartsChart';
import { ReadingLine } from './ReadingLine';
import { WarningList } from './WarningList';
import './WhyPanel.css';

/** What the aim is made of, and what follows from the stroke. */
export function WhyPanel({ app }: { app: AppModels }) {
  const last = app.shot.lastAnswer.value;
  return (
    <section class="why-panel" aria-labelledby="why-heading">
      <header class="why-header">
        <h2 id="why-heading">Why this aim</h2>
        <button type="button" class="button" onClick={() => app.router.close()}>
          Done
        </button>
      </header>
      <WarningList app={app} all />
      {last ? <Explanation app={app} last={last} /> : <p>There is no answer to explain yet.</p>}
    </section>
  );
}

function Explanation({ app, last }: { app: AppModels; last: Answered }) {
  const preferences = app.desk.preferences.value;
  const { answer } = last;
  const tableLengthM = app.kit.current.tables.value.lengthM;
  return (
    <>
      <PartsChart answer={answer} />
      <dl class="why-list">
        <Row term="Stick passes">
          <ReadingLine
            reading={lengthReading(answer.stickOnObjectBallM, preferences.lengthUnit, 'of centre')}
          />
          {', '}
          <ReadingLine
            reading={lengthReading(
              answer.stickOffsetM,
              preferences.lengthUnit,
              'of the ghost ball',
            )}
          />
        </Row>
        <Row term="Pivot bridge">{bridgeWords(answer.pivotBridgeM, preferences, tableLengthM)}</Row>
        <Arrival answer={answer} preferences={preferences} />
        <ObjectBallAfter answer={answer} preferences={preferences} />
        <CueBallAfter answer={answer} preferences={preferences} />
        <Row term="With the cue on the ghost ball">
          <Uncorrected result={app.shot.uncorrected.value} cutRad={last.shot.cutRad} />
        </Row>
        <OtherAims answer={answer} />
      </dl>
    </>
  );
}

function Row({ term, children }: { term: string; children: ComponentChildren }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function Arrival({ answer, preferences }: { answer: AimAnswer; preferences: Preferences }) {
  const { speedMps, cutRad, motion, timeS } = answer.arrival;
  return (
    <Row term="Cue ball arrives">
      {motion} at {speedWords(speedMps, preferences)}, after {timeS.toFixed(2)} s; real cut{' '}
      <ReadingLine reading={angleReading(cutRad)} />
    </Row>
  );
}

function ObjectBallAfter({ answer, preferences }: { answer: AimAnswer; preferences: Preferences }) {
  const thrownRad = thrownAngleRad(answer);
  if (thrownRad === null) return <Row term="Object ball">does not move</Row>;
  return (
    <Row term="Object ball">
      leaves at {speedWords(answer.objectBall.speedMps, preferences)}, thrown{' '}
      <ReadingLine reading={angleReading(thrownRad)} />
    </Row>
  );
}

function CueBallAfter({ answer, preferences }: { answer: AimAnswer; preferences: Preferences }) {
  const { speedMps, directionRad, rollingDirectionRad } = answer.cueBall;
  if (directionRad === null) return <Row term="Cue ball then">stops dead</Row>;
  return (
    <Row term="Cue ball then">
      leaves <ReadingLine reading={angleReading(directionRad)} /> at{' '}
      {speedWords(speedMps, preferences)}
      {rollingDirectionRad !== null && (
        <>
          , and rolls off <ReadingLine reading={angleReading(rollingDirectionRad)} />
        </>
      )}
    </Row>
  );
}

/** Where the object ball goes when nothing is allowed for. */
function Uncorrected({ result, cutRad }: { result: AimResult | null; cutRad: number }) {
  if (!result?.ok) return <>the object ball is missed</>;
  const { directionRad } = result.objectBall;
  if (directionRad === null) return <>the object ball stays</>;
  return (
    <>
      the object ball goes{' '}
      <ReadingLine reading={{ ...angleReading(directionRad - cutRad), rest: 'of target' }} />
    </>
  );
}

function OtherAims({ answer }: { answer: AimAnswer }) {
  if (answer.otherAimsRad.length === 0) return null;
  return (
    <Row term="Other aims that also go">
      {answer.otherAimsRad.map((aimRad, i) => (
        <span key={aimRad}>
          {i > 0 && ', '}
          <ReadingLine reading={angleReading(aimRad)} />
        </span>
      ))}
    </Row>
  );
}

function speedWords(speedMps: number, { speedUnit }: Preferences): string {
  return formatQuantity(speedInUnit(speedMps, speedUnit), SPEED_UNITS[speedUnit]);
}

/** A bridge is measured by hand: in inches by those who think in inches, else in centimetres. */
function bridgeWords(
  bridgeM: number | null,
  preferences: Preferences,
  tableLengthM: number,
): string {
  if (bridgeM === null) return 'no bridge pivots to this aim';
  const unit = preferences.lengthUnit === 'in' ? 'in' : 'cm';
  return formatQuantity(distanceInUnit(bridgeM, unit, tableLengthM), DISTANCE_UNITS[unit]);
}
