import { orderAttempts } from './order-attempts';
import { orderPositions } from './order-positions';
import { orderShelf } from './order-shelf';
import type { ShelfName, Shelves } from './records';
import type { Contents, ImportPlan } from './store-port';

/** What is there once a plan has been carried out. */
export function contentsAfter(contents: Contents, { mode, toPut }: ImportPlan): Contents {
  const isMerge = mode === 'merge';
  const shelf = <S extends ShelfName>(name: S): readonly Shelves[S][] =>
    orderShelf<S>(
      name,
      isMerge ? overlay(contents.shelves[name], toPut.shelves[name]) : toPut.shelves[name],
    );
  const attempts = isMerge ? overlay(contents.attempts, toPut.attempts) : toPut.attempts;
  const positions = isMerge ? overlay(contents.positions, toPut.positions) : toPut.positions;
  return {
    shelves: {
      cues: shelf('cues'),
      cloths: shelf('cloths'),
      balls: shelf('balls'),
      tables: shelf('tables'),
    },
    attempts: orderAttempts(attempts),
    positions: orderPositions(positions),
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
