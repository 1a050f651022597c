/** Rows that count how often the id of any of them is read. */
export function countingIds<T extends { readonly id: string }>(given: readonly T[]) {
  let count = 0;
  const rows = given.map((row) =>
    Object.defineProperty({ ...row }, 'id', {
      enumerable: true,
      get() {
        count += 1;
        return row.id;
      },
    }),
  );
  /** How often since this was asked last. */
  const reads = () => {
    const counted = count;
    count = 0;
    return counted;
  };
  return { rows, reads };
}
