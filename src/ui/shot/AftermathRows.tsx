import type { AimAnswer } from '../../engine/direct/shot';
import { thrownAngleRad } from '../../state/thrown-angle';
import { formatQuantity } from '../../units/format-number';
import type { SpeedScale } from '../../units/speed-unit';
import { angleReading } from './answer-words';
import { ReadingLine } from './ReadingLine';
import { WhyRow } from './WhyRow';

interface Props {
  readonly answer: AimAnswer;
  readonly speedScale: SpeedScale;
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

function Arrival({ answer, speedScale }: Props) {
  const { speedMps, cutRad, motion, timeS } = answer.arrival;
  return (
    <WhyRow term="Cue ball arrives">
      {motion} at {speedWords(speedMps, speedScale)}, after {timeS.toFixed(2)} s; real cut{' '}
      <ReadingLine reading={angleReading(cutRad)} />
    </WhyRow>
  );
}

function ObjectBallAfter({ answer, speedScale }: Props) {
  const thrownRad = thrownAngleRad(answer);
  if (thrownRad === null) return <WhyRow term="Object ball">does not move</WhyRow>;
  return (
    <WhyRow term="Object ball">
      leaves at {speedWords(answer.objectBall.speedMps, speedScale)}, thrown{' '}
      <ReadingLine reading={angleReading(thrownRad)} />
    </WhyRow>
  );
}

function CueBallAfter({ answer, speedScale }: Props) {
  const { speedMps, directionRad, rollingDirectionRad } = answer.cueBall;
  if (directionRad === null) return <WhyRow term="Cue ball then">stops dead</WhyRow>;
  return (
    <WhyRow term="Cue ball then">
      leaves <ReadingLine reading={angleReading(directionRad)} /> at{' '}
      {speedWords(speedMps, speedScale)}
      {rollingDirectionRad !== null && (
        <>
          , and rolls off <ReadingLine reading={angleReading(rollingDirectionRad)} />
        </>
      )}
    </WhyRow>
  );
}

function speedWords(speedMps: number, { inUnit, facts }: SpeedScale): string {
  return formatQuantity(inUnit(speedMps), facts);
}
