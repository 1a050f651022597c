import { isRaisedCue, type Played, RAISED_LINE } from './way-words';

/** The warning that goes with every way that takes a raised cue. */
export function RaisedWay({ way }: { way: Played }) {
  return isRaisedCue(way) ? <p class="way-warning">▲ {RAISED_LINE}</p> : null;
}
