import type { BallPath } from '../../../diagram/ball-paths';
import { layOutWayPicture, type PicturedWay } from '../../../diagram/way-picture';
import type { Play } from '../../../engine/worth/worthy-ways';
import type { ShownWay } from '../../../state/choose/all-ways/shown-way';
import type { ChooseModel } from '../../../state/choose/choose-model';
import { canvasAttributes } from '../../use-canvas';
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
  const size = { widthPx, heightPx };
  const { lengthM, widthM } = choose.shape.value;
  const balls = cueBallFirst(choose.open.value.balls);
  const falls = balls.findIndex(({ name }) => name === meantBall(told));
  const way = { lengthM, widthM, balls, play: meant.play, falls };
  return <DrawnWay class="way-picture" way={way} size={size} />;
}

interface DrawnProps {
  readonly class: string;
  readonly way: PicturedWay;
  readonly size: { readonly widthPx: number; readonly heightPx: number };
}

/** The drawing itself, as large as is said. */
export function DrawnWay({ class: look, way, size }: DrawnProps) {
  const view = layOutWayPicture(way, size);
  return (
    <svg class={look} {...canvasAttributes(size)} aria-hidden="true">
      <SmallTable view={view}>
        <BallPaths paths={view.paths} falls={way.falls} />
      </SmallTable>
    </svg>
  );
}

interface PathsProps {
  readonly paths: readonly BallPath[];
  /** The place in the play of the ball that falls. */
  readonly falls: number;
}

/** The ways of balls; the one that falls stands out. */
export function BallPaths({ paths, falls }: PathsProps) {
  return (
    <>
      {paths.map(({ ball, path }) => (
        <path key={ball} class={`ball-path ${pathClass(ball, falls)}`} d={path} />
      ))}
    </>
  );
}

/** The ball that falls; of a safety the one that is met first. */
export function meantBall(told: Play): number {
  return 'struck' in told ? told.struck.ball : told.goal.ball;
}

/** How the way of a ball is drawn, by its place in the play. */
function pathClass(ball: number, falls: number): string {
  if (ball === 0) return 'is-cue';
  return ball === falls ? 'is-falling' : 'is-other';
}
