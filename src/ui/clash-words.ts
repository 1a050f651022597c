import type { StoreName } from '../store/contents';
import type { Clash } from '../store/tabs/elsewhere';
import { STORE_NOUNS } from '../words/store-words';

/** What two tabs did that could not be joined, in words. */
export function clashWords({ kind, store, name, copyName }: Clash): string {
  const what = name || STORE_NOUNS[store].nameless;
  if (kind === 'gone') return `${what} was deleted in another tab. Bring it back as changed here?`;
  if (kind === 'stays') return `${what} was changed in another tab, so it stays.`;
  return `${what} was changed in another tab too. This tab’s stands; ${otherWords(store, copyName)}`;
}

function otherWords(store: StoreName, copyName: string): string {
  if (copyName) return `the other’s is kept as ${copyName}.`;
  if (store === 'attempts') return 'the other’s is kept beside it, struck out.';
  return 'another shot is held, if none was.';
}
