import type { NearBall } from '../../diagram/near-ball';
import { Ball, Line } from '../drawing-parts';

/** The cue ball in front of the shooter, and the cue on the line it lies on, tip on the ball. */
export function CueInFront({ near }: { near: NearBall }) {
  const { ball, limit, tip, lines } = near;
  return (
    <g class="cue-in-front">
      <Ball ball={ball} class="near-ball" />
      <Ball ball={limit} class="near-limit" />
      {lines && <Line segment={lines.aimOnBall} class="aim-on-ball" />}
      <circle class="near-centre" cx={ball.cx} cy={ball.cy} r="2.5" />
      {lines && <polygon class="cue-shaft" points={lines.shaft.map(pair).join(' ')} />}
      <Ball ball={tip} class="near-tip" />
      <path class="tip-ways" d={waysAbout(tip.cx, tip.cy, tip.r + 3)} />
    </g>
  );
}

function pair({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${x.toFixed(1)},${y.toFixed(1)}`;
}

/** Four small arrowheads about the tip: it can be dragged all ways. */
function waysAbout(x: number, y: number, outPx: number): string {
  const at = (dx: number, dy: number) => `${(x + dx).toFixed(1)} ${(y + dy).toFixed(1)}`;
  const [near, far] = [outPx, outPx + 4];
  return [
    `M${at(near, -4)}L${at(far, 0)}L${at(near, 4)}`,
    `M${at(-near, -4)}L${at(-far, 0)}L${at(-near, 4)}`,
    `M${at(-4, -near)}L${at(0, -far)}L${at(4, -near)}`,
  ].join('');
}
