import type { AimAnswer } from '../../engine/aim/shot';
import { thrownAngleRad } from '../../state/thrown-angle';
import type { Preferences } from '../../store/records';
import { formatQuantity } from '../../units/format-number';
import { SPEED_UNITS, speedInUnit } from '../../units/speed-unit';
import { angleReading } from './answer-words';
import { ReadingLine } from './ReadingLine';
import { WhyRow } from './WhyRow';

interface Props {
  readonly answer: AimAnswer;
  readonly preferences: Preferences;
}

/** How the cue ball arrives, and where both balls go from there. */
export function AftermathRows(props: Props) {
  return (
    <>
      <Arrival {...props} />
      <ObjectBallAfter {...props} />
      <CueBallAfter {...props} />
    </>
  );
}

function Arrival({ answer, preferences }: Props) {
  const { speedMps, cutRad, motion, timeS } = answer.arrival;
  return (
    <WhyRow term="Cue ball arrives">
      {motion} at {speedWords(speedMps, preferences)}, after {timeS.toFixed(2)} s; real cut{' '}
      <ReadingLine reading={angleReading(cutRad)} />
    </WhyRow>
  );
}

function ObjectBallAfter({ answer, preferences }: Props) {
  const thrownRad = thrownAngleRad(answer);
  if (thrownRad === null) return <WhyRow term="Object ball">does not move</WhyRow>;
  return (
    <WhyRow term="Object ball">
      leaves at {speedWords(answer.objectBall.speedMps, preferences)}, thrown{' '}
      <ReadingLine reading={angleReading(thrownRad)} />
    </WhyRow>
  );
}

function CueBallAfter({ answer, preferences }: Props) {
  const { speedMps, directionRad, rollingDirectionRad } = answer.cueBall;
  if (directionRad === null) return <WhyRow term="Cue ball then">stops dead</WhyRow>;
  return (
    <WhyRow term="Cue ball then">
      leaves <ReadingLine reading={angleReading(directionRad)} /> at{' '}
      {speedWords(speedMps, preferences)}
      {rollingDirectionRad !== null && (
        <>
          , and rolls off <ReadingLine reading={angleReading(rollingDirectionRad)} />
        </>
      )}
    </WhyRow>
  );
}

function speedWords(speedMps: number, { speedUnit }: Preferences): string {
  return formatQuantity(speedInUnit(speedMps, speedUnit), SPEED_UNITS[speedUnit]);
}
