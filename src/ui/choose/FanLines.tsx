import type { FanPlay } from '../../engine/plan/ranked-way';
import type { TableShape } from '../../engine/table/table-shape';
import { FAN_LETTERS, fanLine } from './fan-words';

/** Where the cue ball ends after each hit of a fan, by the letters on the board. */
export function FanLines({ plays, shape }: { plays: readonly FanPlay[]; shape: TableShape }) {
  return (
    <ul class="fan-lines">
      {plays.map((play) => (
        <li key={play.hit}>
          <b>{FAN_LETTERS[play.hit]}</b> {fanLine(play, shape)}
        </li>
      ))}
    </ul>
  );
}
