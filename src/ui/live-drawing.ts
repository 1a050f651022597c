import { effect, type ReadonlySignal } from '@preact/signals';
import { useLayoutEffect, useMemo, useReducer, useState } from 'preact/hooks';

/** Reads a part off what is drawn. */
export type Part<V, T> = (now: V) => T;

/** A drawing whose parts follow what it shows, without anything of it being drawn anew. */
export interface Drawing<V> {
  now(): V;
  /** @returns ends it */
  follow(write: (now: V) => void): () => void;
}

export function useDrawing<V>(view: ReadonlySignal<V>): Drawing<V> {
  const drawing = useMemo(() => new Followed(view), [view]);
  useLayoutEffect(() => drawing.begin(), [drawing]);
  return drawing;
}

/**
 * All parts of a drawing are written in one go as what it shows has changed, with whatever else is drawn
 * then: written earlier, who measures something in between would have the browser lay out once more.
 */
class Followed<V> implements Drawing<V> {
  private readonly writers = new Set<(now: V) => void>();
  private shown: V;

  constructor(private readonly view: ReadonlySignal<V>) {
    this.shown = view.peek();
  }

  now(): V {
    return this.shown;
  }

  follow(write: (now: V) => void): () => void {
    this.writers.add(write);
    return () => this.writers.delete(write);
  }

  /** @returns ends it */
  begin(): () => void {
    return effect(() => {
      if (this.view.value === this.shown) return;
      this.shown = this.view.value;
      queueMicrotask(() => {
        for (const write of this.writers) write(this.shown);
      });
    });
  }
}

type Attributes = Readonly<Record<string, string | number>>;

/** Attributes of an element that follow what is drawn: those are written which have changed. */
export function useAttributes<V, A extends Attributes>(drawing: Drawing<V>, part: Part<V, A>) {
  return useState(() => new Held(drawing, part))[0].first;
}

/** An element for as long as it stands, and what its attributes say. */
class Held<V, A extends Attributes> {
  /** What it is first drawn with, and drawn anew with, which writes nothing. */
  readonly first: A & { readonly ref: (element: Element | null) => void };
  private written: A;
  private leave: (() => void) | null = null;

  constructor(
    drawing: Drawing<V>,
    private readonly part: Part<V, A>,
  ) {
    this.written = part(drawing.now());
    const ref = (element: Element | null) => {
      this.leave?.();
      this.leave = element && drawing.follow((now) => this.write(element, now));
    };
    this.first = { ...this.written, ref };
  }

  private write(element: Element, now: V): void {
    const next = this.part(now);
    for (const name in next) {
      if (next[name] !== this.written[name]) element.setAttribute(name, `${next[name]}`);
    }
    this.written = next;
  }
}

/** What is drawn anew as it changes, and with nothing else. */
export function useNow<V, T extends string | boolean>(drawing: Drawing<V>, part: Part<V, T>): T {
  const [value, look] = useReducer(
    (_: T, now: V) => part(now),
    drawing,
    (drawing) => part(drawing.now()),
  );
  useLayoutEffect(() => drawing.follow(look), [drawing]);
  return value;
}

/** The same for plain data. */
export function useSteadyPart<V, T>(drawing: Drawing<V>, part: Part<V, T>): T {
  useNow(drawing, (now) => JSON.stringify(part(now)));
  return part(drawing.now());
}
