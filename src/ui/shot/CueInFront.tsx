import type { NearBall, NearLines } from '../../diagram/near-ball';
import type { ShooterView } from '../../diagram/shooter-view';
import { type Drawing, type Part, useAttributes } from '../live-drawing';
import { LiveBall, LiveLine, LivePath, pointsOf, Shown } from '../live-parts';

interface Props {
  readonly of: Drawing<ShooterView>;
  readonly near: Part<ShooterView, NearBall>;
}

/** The cue ball in front of the shooter, and the cue on the line it lies on, tip on the ball. */
export function CueInFront({ of, near }: Props) {
  return (
    <g class="cue-in-front">
      <LiveBall of={of} at={(now) => near(now).ball} class="near-ball" />
      <LiveBall of={of} at={(now) => near(now).limit} class="near-limit" />
      <Shown of={of} what={(now) => near(now).lines}>
        {(lines) => <LiveLine of={of} at={(now) => lines(now).aimOnBall} class="aim-on-ball" />}
      </Shown>
      <LiveBall of={of} at={(now) => ({ ...near(now).ball, r: 2.5 })} class="near-centre" />
      <Shown of={of} what={(now) => near(now).lines}>
        {(lines) => <Shaft of={of} lines={lines} />}
      </Shown>
      <LiveBall of={of} at={(now) => near(now).tip} class="near-tip" />
      <LivePath of={of} at={(now) => waysAbout(near(now).tip)} class="tip-ways" />
    </g>
  );
}

function Shaft({ of, lines }: Pick<Props, 'of'> & { lines: Part<ShooterView, NearLines> }) {
  const outline = useAttributes(of, (now) => ({ points: pointsOf(lines(now).shaft) }));
  return <polygon class="cue-shaft" {...outline} />;
}

/** Four small arrowheads about the tip: it can be dragged all ways. */
function waysAbout({ cx, cy, r }: NearBall['tip']): string {
  const at = (dx: number, dy: number) => `${(cx + dx).toFixed(1)} ${(cy + dy).toFixed(1)}`;
  const [near, far] = [r + 3, r + 7];
  return [
    `M${at(near, -4)}L${at(far, 0)}L${at(near, 4)}`,
    `M${at(-near, -4)}L${at(-far, 0)}L${at(-near, 4)}`,
    `M${at(-4, -near)}L${at(0, -far)}L${at(4, -near)}`,
  ].join('');
}
