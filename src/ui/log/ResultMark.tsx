import type { Result } from '../../engine/player/shot-line';

/** A pocket above, and where the ball is; or how cue ball and ball met. */
const MARKS: Readonly<Record<Result, readonly Mark[]>> = {
  went: [
    { cx: 14, cy: 8, r: 6.5 },
    { cx: 14, cy: 8, r: 3.25, look: 'is-filled' },
  ],
  left: [
    { cx: 18, cy: 8, r: 6.5 },
    { cx: 5, cy: 8, r: 3.25, look: 'is-filled' },
  ],
  right: [
    { cx: 10, cy: 8, r: 6.5 },
    { cx: 23, cy: 8, r: 3.25, look: 'is-filled' },
  ],
  short: [
    { cx: 14, cy: 5, r: 4 },
    { cx: 14, cy: 15.5, r: 3.25, look: 'is-filled' },
  ],
  thin: [
    { cx: 19, cy: 10, r: 5.5 },
    { cx: 9.5, cy: 10, r: 5.5, look: 'is-dashed' },
  ],
  full: [
    { cx: 15.5, cy: 10, r: 5.5 },
    { cx: 12, cy: 10, r: 5.5, look: 'is-dashed' },
  ],
  untouched: [
    { cx: 20.5, cy: 10, r: 5 },
    { cx: 6.5, cy: 10, r: 5, look: 'is-dashed' },
  ],
};

interface Mark {
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  readonly look?: 'is-filled' | 'is-dashed';
}

/** What became of a shot as a small drawing, beside its words. */
export function ResultMark({ result }: { result: Result }) {
  return (
    <svg class="result-mark" viewBox="0 0 28 20" width="34" height="24" aria-hidden="true">
      {MARKS[result].map(({ look, ...circle }) => (
        <circle key={`${circle.cx} ${circle.r}`} class={look} {...circle} />
      ))}
    </svg>
  );
}
