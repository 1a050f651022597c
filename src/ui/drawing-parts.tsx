import type { Circle } from '../diagram/canvas';
import type { Segment } from '../diagram/overhead-view';

/** A straight stretch of a drawing, if there is any. */
export function Line({ segment, class: className }: { segment: Segment | null; class: string }) {
  if (!segment) return null;
  const { from, to } = segment;
  return <line class={className} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />;
}

/** A ball of a drawing. */
export function Ball({ ball, class: className }: { ball: Circle; class: string }) {
  return <circle class={className} cx={ball.cx} cy={ball.cy} r={ball.r} />;
}
