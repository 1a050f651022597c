import { computed, type ReadonlySignal, useComputed } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { Circle, Label, Point } from '../diagram/canvas';
import type { Segment } from '../diagram/overhead-view';

/** Reads off signals where something now is. */
export type Live<T> = () => T;

type Signals<T> = { readonly [K in keyof T]: ReadonlySignal<T[K]> };

/** Attributes that follow signals: each is written as it changes, and nothing is drawn anew. */
export function useAttributes<T extends object>(read: Live<T>): Signals<T> {
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it reads are signals
  return useMemo(() => {
    const all = computed(read);
    const names = Object.keys(all.peek()) as (keyof T)[];
    return Object.fromEntries(
      names.map((name) => [name, computed(() => all.value[name])]),
    ) as Signals<T>;
  }, []);
}

interface LiveProps<T> {
  readonly at: Live<T>;
  readonly class?: string;
}

/** A straight stretch of a drawing that something moves. */
export function LiveLine({ at, class: className }: LiveProps<Segment>) {
  const ends = useAttributes(() => {
    const { from, to } = at();
    return { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
  });
  return <line class={className} {...ends} />;
}

/** A ball of a drawing that something moves. */
export function LiveBall({ at, class: className }: LiveProps<Circle>) {
  const circle = useAttributes(() => {
    const { cx, cy, r } = at();
    return { cx, cy, r };
  });
  return <circle class={className} {...circle} />;
}

/** A path of a drawing that something moves. */
export function LivePath({ at, class: className }: LiveProps<string>) {
  return <path class={className} d={useComputed(at)} />;
}

interface TextProps extends LiveProps<Label> {
  readonly children: ComponentChildren;
  /** A second line, under the first. */
  readonly second?: string | undefined;
}

/** A name in a drawing that goes with what it names. */
export function LiveText({ at, class: className, children, second }: TextProps) {
  const place = useAttributes(() => {
    const { x, y, anchor } = at();
    return { x, y, 'text-anchor': anchor };
  });
  return (
    <text class={className} {...place}>
      {children}
      {second && (
        <tspan x={place.x} dy="1.05em">
          {second}
        </tspan>
      )}
    </text>
  );
}

/** Points as polygons and polylines take them. */
export function pointsOf(points: readonly Point[]): string {
  return points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
}

interface ShownProps<T> {
  readonly what: Live<T | null>;
  readonly children: (last: Live<T>) => ComponentChildren;
}

/** What is there at times: drawn as it comes, and told where it last was until it has gone. */
export function Shown<T extends object | string>({ what, children }: ShownProps<T>) {
  const isThere = useComputed(() => what() !== null).value;
  const last = useRef<T | null>(null);
  if (!isThere) return null;
  return children(() => {
    last.current = what() ?? last.current;
    return last.current as T;
  });
}
