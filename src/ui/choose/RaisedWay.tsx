import type { RankedWay } from '../../engine/plan/ranked-way';
import { isRaisedCue, RAISED_LINE } from './way-words';

/** The warning that goes with every way that takes a raised cue. */
export function RaisedWay({ way }: { way: Pick<RankedWay, 'way' | 'option'> }) {
  return isRaisedCue(way) ? <p class="way-warning">▲ {RAISED_LINE}</p> : null;
}
