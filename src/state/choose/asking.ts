import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { isSame } from '../../store/same-value';

/** How work goes that workers were asked for. */
interface Working {
  readonly state: 'none' | 'running' | 'done' | 'stopped' | 'failed';
}

/** Work that was asked for, of which the last counts. */
export interface Asking<Q, S extends Working> {
  /** What has come of it. */
  readonly shown: ReadonlySignal<S>;
  /** What was asked; null: nothing. */
  readonly asked: ReadonlySignal<Q | null>;
  /** Whether just that would be asked now, as far as it counts. */
  readonly isAsked: ReadonlySignal<boolean>;
  /** Whether something was asked, and something else would be now, as far as that counts. */
  readonly isStale: ReadonlySignal<boolean>;
  show(part: Partial<S>): void;
  /** Begins anew; what is shown of it passes while it is wanted. */
  begin(question: Q, shown: S): Wanted<S>;
  stop(): void;
  /** As if nothing had been asked. */
  forget(): void;
}

/** Work as long as nothing else is asked. */
export interface Wanted<S> {
  readonly signal: AbortSignal;
  show(part: () => Partial<S>): void;
  /** Whatever is still under way is wanted no longer. */
  drop(): void;
}

/**
 * Keeps work that was asked for beside what would be asked now: once that is something else, work under
 * way is dropped.
 *
 * @param counts what of a question makes it another
 */
export function createAsking<Q, S extends Working>(
  present: ReadonlySignal<Q | string | null>,
  nothing: S,
  counts: (question: Q) => unknown = (question) => question,
): Asking<Q, S> {
  const shown = signal<S>(nothing);
  const asked = signal<Q | null>(null);
  const counted = (question: Q | string | null) =>
    typeof question === 'string' || question === null ? question : counts(question);
  const isAsked = computed(() => isSame(counted(present.value), counted(asked.value)));
  const isStale = computed(() => asked.value !== null && !isAsked.value);
  const isRunning = computed(() => shown.value.state === 'running');
  let abort = new AbortController();

  const show = (part: Partial<S>) => {
    shown.value = { ...shown.peek(), ...part };
  };
  const forget = () => {
    abort.abort();
    asked.value = null;
    shown.value = nothing;
  };
  // Only while it runs: what would be asked is not worked out anew for every move of a ball.
  effect(() => {
    if (isRunning.value && isStale.value) forget();
  });

  return {
    shown,
    asked,
    isAsked,
    isStale,
    show,
    begin(question, first) {
      abort.abort();
      const mine = new AbortController();
      abort = mine;
      asked.value = question;
      shown.value = first;
      return {
        signal: mine.signal,
        show(part) {
          if (!mine.signal.aborted) show(part());
        },
        drop: () => mine.abort(),
      };
    },
    stop() {
      if (shown.peek().state !== 'running') return;
      abort.abort();
      shown.value = { ...shown.peek(), state: 'stopped' };
    },
    forget,
  };
}
