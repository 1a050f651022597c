import { type Interval, layOutSureness } from '../../diagram/trial-bars';
import type { Sureness } from '../../state/measure/sureness';
import type { LengthUnit } from '../../units/unit-names';
import { sureLabel, surenessInWords } from './knowledge-words';
import './SurenessList.css';

interface Props {
  readonly rows: readonly Sureness[];
  readonly unit: LengthUnit;
  /** What the earlier figure was: assumed of the kit, or known before this shot. */
  readonly since?: 'assumed' | 'earlier';
}

/** How sure each figure was, and is: the thin bar above the earlier, the thick one below now. */
export function SurenessList({ rows, unit, since = 'assumed' }: Props) {
  return (
    <ul class="sureness-list">
      {rows.map((row) => (
        <li key={row.quantity}>
          <p>
            <span class="sureness-label">{sureLabel(row.quantity)}:</span>{' '}
            {surenessInWords(row, unit, since)}
          </p>
          <SurenessBars row={row} />
        </li>
      ))}
    </ul>
  );
}

function SurenessBars({ row }: { row: Sureness }) {
  const { before, now } = layOutSureness(row.before, row.now);
  return (
    <svg class="sureness-bars" aria-hidden="true">
      <line class="sureness-track" x2="100%" y1="12" y2="12" />
      <Bar interval={before} y={6} class="sureness-before" />
      {row.isMeasured && <Bar interval={now} y={17} class="sureness-now" />}
    </svg>
  );
}

function Bar({ interval, y, class: className }: { interval: Interval; y: number; class: string }) {
  const { from, at, to } = interval;
  return (
    <g class={className}>
      <line x1={percent(from)} x2={percent(to)} y1={y} y2={y} />
      <line class="sureness-mid" x1={percent(at)} x2={percent(at)} y1={y - 5} y2={y + 5} />
    </g>
  );
}

function percent(share: number): string {
  return `${(share * 100).toFixed(1)}%`;
}
