import type { AimAnswer } from '../../engine/direct/shot';
import type { Answered } from '../../state/shot-answers';
import type { Preferences } from '../../store/records';
import { DISTANCE_UNITS, distanceInUnit } from '../../units/distance-unit';
import { formatQuantity } from '../../units/format-number';
import type { Models, WhyProps } from '../app-models';
import { PictureButton } from '../cards/TakeAway';
import { lieWords } from '../choose/shot-words';
import { strokeWords } from '../choose/way-words';
import { AftermathRows } from './AftermathRows';
import { angleReading, lengthReading } from './answer-words';
import { CoachView } from './CoachView';
import { HowOften } from './HowOften';
import { HowSure } from './HowSure';
import { PartsChart } from './PartsChart';
import { staleNote } from './picture-words';
import { ReadingLine } from './ReadingLine';
import { isRoomStale } from './room-of-field';
import { tipOf } from './tip-told';
import { WarningList } from './WarningList';
import { WhatItForgives } from './WhatItForgives';
import { WhyRow } from './WhyRow';
import './WhyPanel.css';

/** What is written under a picture of the shot. */
const PICTURE_WORDS = [
  '.answer-lead',
  '.answer-meaning, .why-panel .warning-list li',
  '.overhead-caption > :first-child',
];

/** Why this aim, or the aim alone for a shared screen. */
export function WhyPanel(props: WhyProps) {
  const { app, late } = props;
  if (app.router.route.value.panel === 'coach') {
    return <CoachView app={app} awake={late?.awake} />;
  }
  return <WhyThisAim {...props} />;
}

/** What the aim is made of, and what follows from the stroke. */
function WhyThisAim({ app, late }: WhyProps) {
  const last = app.shot.lastAnswer.value;
  return (
    <section class="why-panel" aria-labelledby="why-heading">
      <header class="why-header">
        <h2 id="why-heading">Why this aim</h2>
        <button type="button" class="button" onClick={() => app.router.close()}>
          Done
        </button>
      </header>
      <div class="why-take">
        <button type="button" class="button" onClick={() => app.router.open('coach')}>
          Coach’s view
        </button>
        <button type="button" class="button" onClick={() => app.router.visit('kit', 'share/shot')}>
          Share
        </button>
        {late && last && (
          <PictureButton
            cards={late.cards}
            name="leeway-shot"
            from=".shot-picture"
            words={PICTURE_WORDS}
            lines={() => askedLines(app, last)}
            isOff={app.shot.stale.value}
          />
        )}
      </div>
      <WarningList app={app} all />
      {app.shot.stale.value && last && <p class="stale-note">{staleNote(app)}</p>}
      {last ? (
        <div class={app.shot.stale.value ? 'why-body is-stale' : 'why-body'}>
          <Explanation app={app} last={last} />
        </div>
      ) : (
        <p>There is no answer to explain yet.</p>
      )}
    </section>
  );
}

/** How it lies, and how it is struck. */
function askedLines(app: WhyProps['app'], { shot }: Answered): readonly string[] {
  const { lengthM } = app.kit.current.tables.peek();
  return [
    lieWords(shot, app.desk.preferences.peek(), lengthM),
    strokeWords({ option: { stroke: shot } }, app.shot.speedScale.peek(), tipOf(app)),
  ];
}

function Explanation({
  app,
  last,
}: {
  app: Models<'shot' | 'room' | 'player' | 'kit' | 'desk' | 'router'>;
  last: Answered;
}) {
  const preferences = app.desk.preferences.value;
  const { answer } = last;
  const assessed = app.room.room.value;
  const tableLengthM = app.kit.current.tables.value.lengthM;
  return (
    <>
      <p class="why-allows">The aim allows for</p>
      <PartsChart answer={answer} />
      <RoomProblem room={app.room} />
      {assessed && (
        <div class={isRoomStale(app) ? 'why-room is-stale' : 'why-room'}>
          <HowOften app={app} assessed={assessed} />
          <WhatItForgives app={app} wants={assessed.wants} />
          <details class="why-fold">
            <summary>
              <h3>How sure the aim is</h3>
            </summary>
            <HowSure app={app} certainty={assessed.certainty} />
          </details>
        </div>
      )}
      <details class="why-fold">
        <summary>
          <h3>What follows</h3>
        </summary>
        <dl class="why-list">
          <WhyRow term="Stick passes">
            <ReadingLine
              reading={lengthReading(
                answer.stickOnObjectBallM,
                preferences.lengthUnit,
                'of centre',
              )}
            />
            {', '}
            <ReadingLine
              reading={lengthReading(
                answer.stickOffsetM,
                preferences.lengthUnit,
                'of the ghost ball',
              )}
            />
          </WhyRow>
          <WhyRow term="Pivot bridge">
            {bridgeWords(answer.pivotBridgeM, preferences, tableLengthM)}
          </WhyRow>
          <AftermathRows answer={answer} speedScale={app.shot.speedScale.value} />
          <OtherAims answer={answer} />
        </dl>
      </details>
    </>
  );
}

/** Says that the room for error is missing, and has another go at it. */
function RoomProblem({ room }: Models<'room'>) {
  if (room.problem.value === null) return null;
  return (
    <div class="why-problem">
      <p>
        <span aria-hidden="true">⚠</span> {room.problem.value}
      </p>
      <button type="button" class="button" onClick={room.tryAgain}>
        Try again
      </button>
    </div>
  );
}

function OtherAims({ answer }: { answer: AimAnswer }) {
  if (answer.otherAimsRad.length === 0) return null;
  return (
    <WhyRow term="Other aims that also go">
      {answer.otherAimsRad.map((aimRad, i) => (
        <span key={aimRad}>
          {i > 0 && ', '}
          <ReadingLine reading={angleReading(aimRad)} />
        </span>
      ))}
    </WhyRow>
  );
}

/** What a hand can make, from the ball to the bridge (common practice, no source). */
const SHORTEST_BRIDGE_M = 0.1;
const LONGEST_BRIDGE_M = 0.6;

/** A bridge is measured by hand: in inches by those who think in inches, else in centimetres. */
function bridgeWords(
  bridgeM: number | null,
  preferences: Preferences,
  tableLengthM: number,
): string {
  if (bridgeM === null) return 'no bridge pivots to this aim';
  const unit = preferences.lengthUnit === 'in' ? 'in' : 'cm';
  const bridge = formatQuantity(distanceInUnit(bridgeM, unit, tableLengthM), DISTANCE_UNITS[unit]);
  if (bridgeM < SHORTEST_BRIDGE_M) return `${bridge}: shorter than a hand can make`;
  return bridgeM > LONGEST_BRIDGE_M ? `${bridge}: longer than an arm can make` : bridge;
}
