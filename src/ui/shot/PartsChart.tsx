import { layOutParts, type PartBar } from '../../diagram/parts-bars';
import type { AimAnswer } from '../../engine/direct/shot';
import { angleReading } from './answer-words';
import { ReadingLine } from './ReadingLine';
import './PartsChart.css';

/** What squirt, swerve and throw each add to the aim, end to end, and their sum. */
export function PartsChart({ answer }: { answer: AimAnswer }) {
  const { squirtRad, swerveRad, throwRad } = answer.parts;
  const bars = layOutParts([squirtRad, swerveRad, throwRad]);
  const rows = [
    ['squirt', squirtRad],
    ['swerve', swerveRad],
    ['throw', throwRad],
  ] as const;
  const sum = bars.at(-1);
  return (
    <dl class="parts-chart">
      {rows.map(([term, partRad], i) => (
        <PartRow key={term} term={term} partRad={partRad} bar={bars[i]} />
      ))}
      <PartRow term="aim" partRad={answer.aimRad} bar={sum && { from: 0.5, to: sum.to }} isSum />
    </dl>
  );
}

interface RowProps {
  readonly term: string;
  readonly partRad: number;
  readonly bar: PartBar | undefined;
  readonly isSum?: boolean;
}

function PartRow({ term, partRad, bar, isSum = false }: RowProps) {
  const reading = angleReading(partRad);
  // A bar of nothing would look like a little of something.
  const shown = reading.side === 'none' ? undefined : bar;
  return (
    <div class={isSum ? 'is-sum' : undefined}>
      <dt>{term}</dt>
      <dd>
        <ReadingLine reading={reading} />
        <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
          <path class="parts-zero" d="M50 0V10" />
          {shown && (
            <rect
              x={Math.min(shown.from, shown.to) * 100}
              width={Math.abs(shown.to - shown.from) * 100}
              y="2.5"
              height="5"
            />
          )}
        </svg>
      </dd>
    </div>
  );
}
