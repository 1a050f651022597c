import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId, useRef } from 'preact/hooks';
import './Paged.css';

/** As many rows as are quick to show on a slow phone, and some screens to scroll. */
export const PAGE_ROWS = 50;

interface Props<T> {
  /** What is listed, as its heading says. */
  readonly label: string;
  readonly items: readonly T[];
  /** The page of this one is shown first. */
  readonly startAt?: number;
  /** The list of those shown. */
  readonly children: (shown: readonly T[]) => ComponentChildren;
}

/** A long list by pages, lest showing it take longer the more is kept; a short one as it is. */
export function Paged<T>({ label, items, startAt = 0, children }: Props<T>) {
  const turned = useSignal(Math.max(0, Math.floor(startAt / PAGE_ROWS)));
  const select = useRef<HTMLSelectElement>(null);
  const selectId = useId();
  const pages = Math.max(1, Math.ceil(items.length / PAGE_ROWS));
  const page = Math.min(turned.value, pages - 1);
  const first = page * PAGE_ROWS;
  const shown = items.slice(first, first + PAGE_ROWS);
  if (pages === 1) return <>{children(shown)}</>;
  const turnTo = (next: number) => {
    turned.value = next;
    // At the top of the list: it begins anew.
    select.current?.focus();
  };
  return (
    <>
      <p class="page-place">
        <label for={selectId} class="visually-hidden">
          {label}, shown
        </label>
        <select
          id={selectId}
          ref={select}
          class="unit-select"
          value={page}
          onChange={({ currentTarget }) => {
            turned.value = Number(currentTarget.value);
          }}
        >
          {Array.from({ length: pages }, (_, at) => (
            <option key={at} value={at}>
              {at * PAGE_ROWS + 1}–{Math.min(items.length, (at + 1) * PAGE_ROWS)}
            </option>
          ))}
        </select>{' '}
        of {items.length}
      </p>
      {children(shown)}
      <nav class="page-turns" aria-label={`${label}, more`}>
        <button type="button" class="button" disabled={page === 0} onClick={() => turnTo(page - 1)}>
          <span aria-hidden="true">‹</span> Previous {PAGE_ROWS}
        </button>
        <button
          type="button"
          class="button"
          disabled={page === pages - 1}
          onClick={() => turnTo(page + 1)}
        >
          Next {Math.min(PAGE_ROWS, Math.max(1, items.length - first - PAGE_ROWS))}{' '}
          <span aria-hidden="true">›</span>
        </button>
      </nav>
    </>
  );
}
