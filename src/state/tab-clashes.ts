import { type ReadonlySignal, signal } from '@preact/signals';
import type { StorePort } from '../store/store-port';
import type { Clash } from '../store/tabs/elsewhere';

/** What two tabs did that could not be joined, for the person to see and to answer. */
export interface TabClashes {
  readonly clashes: ReadonlySignal<readonly Clash[]>;
  /** Whether a row that was changed here and deleted elsewhere is wanted back. */
  answer(clash: Clash, isWanted: boolean): void;
  /** It was seen. */
  dismiss(clash: Clash): void;
}

export function createTabClashes(
  store: Pick<StorePort, 'onElsewhere' | 'answerElsewhere'>,
): TabClashes {
  const clashes = signal<readonly Clash[]>([]);
  const dismiss = ({ store, id }: Pick<Clash, 'store' | 'id'>) => {
    clashes.value = clashes.peek().filter((one) => one.store !== store || one.id !== id);
  };
  store.onElsewhere((news) => {
    if (news.kind === 'row') return;
    dismiss(news);
    if (news.kind !== 'answered') clashes.value = [...clashes.peek(), news];
  });
  return {
    clashes,
    answer: ({ store: name, id }, isWanted) => store.answerElsewhere(name, id, isWanted),
    dismiss,
  };
}
