import { layOutWayPicture } from '../../../diagram/way-picture';
import type { Play } from '../../../engine/worth/worthy-ways';
import type { ShownWay } from '../../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { cueBallFirst } from '../fan-words';
import { SmallTable } from '../SmallTable';

/** The longer and the shorter side of the drawing, px. */
const LONG = 84;
const SHORT = 46;

interface Props {
  readonly choose: ChooseModel;
  readonly way: ShownWay;
  /** Whether the table lies with its break end on the left, as on the board. */
  readonly isTurned: boolean;
}

/** What each ball does until the one meant falls or, of a safety, all rest; the row's words say the same. */
export function WayPicture({ choose, way: { told, fan }, isTurned }: Props) {
  const meant = fan.find(({ hit }) => hit === 'true');
  if (!meant) return null;
  const [widthPx, heightPx] = isTurned ? [LONG, SHORT] : [SHORT, LONG];
  const { lengthM, widthM } = choose.shape.value;
  const balls = cueBallFirst(choose.open.value.balls);
  const falls = balls.findIndex(({ name }) => name === meantBall(told));
  const view = layOutWayPicture(
    { lengthM, widthM, balls, play: meant.play, falls },
    { widthPx, heightPx },
  );
  return (
    <svg
      class="way-picture"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
    >
      <SmallTable view={view}>
        {view.paths.map(({ ball, path }) => (
          <path key={ball} class={`ball-path ${pathClass(ball, falls)}`} d={path} />
        ))}
      </SmallTable>
    </svg>
  );
}

/** The ball that falls; of a safety the one that is met first. */
export function meantBall(told: Play): number {
  return 'struck' in told ? told.struck.ball : told.goal.ball;
}

/** How the way of a ball is drawn, by its place in the play. */
export function pathClass(ball: number, falls: number): string {
  if (ball === 0) return 'is-cue';
  return ball === falls ? 'is-falling' : 'is-other';
}
