import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Circle, Label, Point } from '../diagram/canvas';
import type { Segment } from '../diagram/overhead-view';
import { type Drawing, type Part, useAttributes, useNow } from './live-drawing';

interface LiveProps<V, T> {
  readonly of: Drawing<V>;
  readonly at: Part<V, T>;
  readonly class?: string;
}

/** A straight stretch of a drawing that something moves. */
export function LiveLine<V>({ of, at, class: className }: LiveProps<V, Segment>) {
  const ends = useAttributes(of, (now) => {
    const { from, to } = at(now);
    return { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  });
  return <line class={className} {...ends} />;
}

/** A ball of a drawing that something moves. */
export function LiveBall<V>({ of, at, class: className }: LiveProps<V, Circle>) {
  const circle = useAttributes(of, (now) => {
    const { cx, cy, r } = at(now);
    return { cx, cy, r };
  });
  return <circle class={className} {...circle} />;
}

/** A path of a drawing that something moves. */
export function LivePath<V>({ of, at, class: className }: LiveProps<V, string>) {
  const path = useAttributes(of, (now) => ({ d: at(now) }));
  return <path class={className} {...path} />;
}

interface TextProps<V> extends LiveProps<V, Label> {
  readonly children: ComponentChildren;
  /** A second line, under the first. */
  readonly second?: string | undefined;
}

/**
 * A name in a drawing that goes with what it names. What it stands in is moved: for another place of its
 * own a browser would lay its letters out anew.
 */
export function LiveText<V>({ of, at, class: className, children, second }: TextProps<V>) {
  const place = useAttributes(of, (now) => {
    const { x, y, anchor } = at(now);
    return { transform: `translate(${x} ${y})`, 'text-anchor': anchor };
  });
  return (
    <g {...place}>
      <text class={className}>
        {children}
        {second && (
          <tspan x="0" dy="1.05em">
            {second}
          </tspan>
        )}
      </text>
    </g>
  );
}

/** A word in a drawing that changes with what it names. */
export function LiveWord<V>({ of, word }: { of: Drawing<V>; word: Part<V, string> }) {
  return <>{useNow(of, word)}</>;
}

/** Points as polygons and polylines take them. */
export function pointsOf(points: readonly Point[]): string {
  return points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
}

interface ShownProps<V, T> {
  readonly of: Drawing<V>;
  readonly what: Part<V, T | null>;
  readonly children: (last: Part<V, T>) => ComponentChildren;
}

/** What is there at times: drawn as it comes, and told where it last was until it has gone. */
export function Shown<V, T>({ of, what, children }: ShownProps<V, T>) {
  const isThere = useNow(of, (now) => what(now) !== null);
  const last = useRef<T | null>(null);
  if (!isThere) return null;
  return children((now) => {
    last.current = what(now) ?? last.current;
    return last.current as T;
  });
}
