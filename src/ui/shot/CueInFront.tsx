import { useComputed } from '@preact/signals';
import type { NearBall } from '../../diagram/near-ball';
import { type Live, LiveBall, LiveLine, LivePath, pointsOf, Shown } from '../live-parts';

/** The cue ball in front of the shooter, and the cue on the line it lies on, tip on the ball. */
export function CueInFront({ near }: { near: Live<NearBall> }) {
  const lines = () => near().lines;
  return (
    <g class="cue-in-front">
      <LiveBall at={() => near().ball} class="near-ball" />
      <LiveBall at={() => near().limit} class="near-limit" />
      <Shown what={lines}>
        {(drawn) => <LiveLine at={() => drawn().aimOnBall} class="aim-on-ball" />}
      </Shown>
      <LiveBall at={() => ({ ...near().ball, r: 2.5 })} class="near-centre" />
      <Shown what={lines}>{(drawn) => <Shaft shaft={() => drawn().shaft} />}</Shown>
      <LiveBall at={() => near().tip} class="near-tip" />
      <LivePath at={() => waysAbout(near().tip)} class="tip-ways" />
    </g>
  );
}

function Shaft({ shaft }: { shaft: Live<Parameters<typeof pointsOf>[0]> }) {
  return <polygon class="cue-shaft" points={useComputed(() => pointsOf(shaft()))} />;
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
