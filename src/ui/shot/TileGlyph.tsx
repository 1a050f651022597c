import type { Shot } from '../../engine/direct/shot';
import { degreesOf } from '../../units/angle-degrees';

/** A small picture of where the tip touches the cue ball. */
export function TipGlyph({ side, height }: Pick<Shot, 'side' | 'height'>) {
  return (
    <svg class="tile-glyph" viewBox="-1.12 -1.12 2.24 2.24" aria-hidden="true">
      <circle r="1" />
      <path d="M-1 0H1M0 -1V1" class="glyph-cross" />
      <circle r="0.2" cx={side} cy={-height} class="glyph-dot" />
    </svg>
  );
}

/** A small picture of the cue's slope; drawn a little steeper than true, to be seen at 3°. */
export function ElevationGlyph({ elevationRad }: Pick<Shot, 'elevationRad'>) {
  const shown = Math.min(75, degreesOf(elevationRad) * 1.2);
  return (
    <svg class="tile-glyph is-wide" viewBox="-2.4 -2.2 3.6 2.4" aria-hidden="true">
      <path d="M-2.4 0.1H1.2" class="glyph-cross" />
      <circle r="0.45" cx="0.7" cy="-0.35" />
      <path d="M0.2 -0.35H-2.4" class="glyph-cue" transform={`rotate(${shown} 0.2 -0.35)`} />
    </svg>
  );
}
