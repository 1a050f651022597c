import type { FanPlay } from '../../engine/plan/ranked-way';
import type { ChooseModel } from '../../state/choose/choose-model';
import { FAN_LETTERS, fanLine, leftWords } from './fan-words';

interface Props {
  readonly choose: Pick<ChooseModel, 'open' | 'shape'>;
  readonly plays: readonly FanPlay[];
  /** What is to fall. */
  readonly ball: number;
}

/** Where the balls end after each hit of a fan, by the letters on the board. */
export function FanLines({ choose, plays, ball }: Props) {
  const { balls } = choose.open.value;
  const shape = choose.shape.value;
  return (
    <ul class="fan-lines">
      {plays.map((play) => (
        <li key={play.hit}>
          <b>{FAN_LETTERS[play.hit]}</b> {fanLine(play, shape)}
          {leftWords(play, ball, balls, shape)}
        </li>
      ))}
    </ul>
  );
}
