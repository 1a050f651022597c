import { residualDot, USUAL_BAND } from '../../diagram/trial-bars';
import type { ReadingReport } from '../../engine/fit/shot-report';
import './ResidualBar.css';

/**
 * A reading beside what the fit expects, in standard deviations: the middle is as expected, the
 * band holds nineteen of twenty. A doubtful one is a ring.
 */
export function ResidualBar({
  reading,
  isDoubtful,
}: {
  reading: ReadingReport;
  isDoubtful: boolean;
}) {
  const dot = residualDot(reading.read, reading.expected, reading.sd);
  return (
    <svg class="residual-bar" aria-hidden="true">
      <rect
        class="residual-band"
        x={percent(USUAL_BAND.from)}
        width={percent(USUAL_BAND.to - USUAL_BAND.from)}
        y="2"
        height="14"
      />
      <line class="residual-track" x2="100%" y1="9" y2="9" />
      <line class="residual-middle" x1="50%" x2="50%" y1="2" y2="16" />
      {dot && (
        <circle
          class={isDoubtful ? 'residual-dot is-doubtful' : 'residual-dot'}
          cx={percent(0.02 + 0.96 * dot.at)}
          cy="9"
          r="5"
        />
      )}
    </svg>
  );
}

/** How far off a reading is, in words. */
export function residualWords({ read, expected, sd }: ReadingReport): string {
  const dot = residualDot(read, expected, sd);
  if (!dot) return 'nothing to compare with';
  const size = Math.abs(dot.deviations);
  return size < 1 ? 'as expected' : `${size.toFixed(1)} deviations off`;
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}
