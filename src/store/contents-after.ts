import type { Contents, Lists, Rows } from './contents';
import type { ImportPlan } from './store-port';
import { LISTS, ofLists } from './stores';

/** What is there once a plan has been carried out. */
export function contentsAfter(contents: Contents, { mode, toPut }: ImportPlan): Contents {
  const isMerge = mode === 'merge';
  const [present, given]: readonly [Lists, Lists] = [contents, toPut];
  const lists = ofLists<'rows'>((name) =>
    LISTS[name].order(
      isMerge ? overlay<Rows[typeof name]>(present[name], given[name]) : given[name],
    ),
  );
  return {
    ...lists,
    desk: toPut.desk ?? contents.desk,
    setAside: isMerge ? [...contents.setAside, ...toPut.setAside] : toPut.setAside,
  };
}

function overlay<T extends { readonly id: string }>(
  present: readonly T[],
  toPut: readonly T[],
): readonly T[] {
  const replaced = new Set(toPut.map(({ id }) => id));
  return [...present.filter(({ id }) => !replaced.has(id)), ...toPut];
}
