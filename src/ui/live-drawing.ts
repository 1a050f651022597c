import { effect, type ReadonlySignal } from '@preact/signals';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

/** Reads a part off what is drawn. */
export type Part<V, T> = (now: V) => T;

/** A drawing whose parts follow what it shows, without anything of it being drawn anew. */
export interface Drawing<V> {
  now(): V;
  /** @returns ends it */
  follow(write: (now: V) => void): () => void;
}

/**
 * All parts of a drawing are written in one go as what it shows has changed, with whatever else is drawn
 * then: written earlier, who measures something in between would have the browser lay out once more.
 */
export function useDrawing<V>(view: ReadonlySignal<V>): Drawing<V> {
  const writers = useMemo(() => new Set<(now: V) => void>(), []);
  useLayoutEffect(() => {
    const writeAll = () => {
      for (const write of writers) write(view.peek());
    };
    return effect(() => {
      view.value;
      queueMicrotask(writeAll);
    });
  }, [view, writers]);
  return useMemo(
    () => ({
      now: () => view.peek(),
      follow(write) {
        writers.add(write);
        return () => writers.delete(write);
      },
    }),
    [view, writers],
  );
}

type Attributes = Readonly<Record<string, string | number>>;

/** Attributes of an element that follow what is drawn: those are written which have changed. */
export function useAttributes<V, A extends Attributes>(drawing: Drawing<V>, part: Part<V, A>) {
  const [held] = useState(() => new Held(part, drawing.now()));
  useLayoutEffect(() => drawing.follow((now) => held.write(now)), [drawing, held]);
  return held.first;
}

/** An element, and what its attributes say. */
class Held<V, A extends Attributes> {
  /** What it is first drawn with, and drawn anew with, which writes nothing. */
  readonly first: A & { readonly ref: (element: Element | null) => void };
  private element: Element | null = null;
  private written: A;

  constructor(
    private readonly part: Part<V, A>,
    now: V,
  ) {
    this.written = part(now);
    const ref = (element: Element | null) => {
      this.element = element;
    };
    this.first = { ...this.written, ref };
  }

  write(now: V): void {
    const next = this.part(now);
    for (const name in next) {
      if (next[name] !== this.written[name]) this.element?.setAttribute(name, `${next[name]}`);
    }
    this.written = next;
  }
}

/** What is drawn anew as it changes, and with nothing else. */
export function useNow<V, T extends string | boolean>(drawing: Drawing<V>, part: Part<V, T>): T {
  const [value, setValue] = useState(() => part(drawing.now()));
  const first = useRef(part);
  useLayoutEffect(() => drawing.follow((now) => setValue(first.current(now))), [drawing]);
  return value;
}

/** The same for plain data. */
export function useSteadyPart<V, T>(drawing: Drawing<V>, part: Part<V, T>): T {
  useNow(drawing, (now) => JSON.stringify(part(now)));
  return part(drawing.now());
}
