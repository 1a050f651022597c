/** How often a second `work` runs on this machine now: the best of several rounds, for others work here too. */
export function ratePerSecond(calls: number, work: (call: number) => void, rounds = 5): number {
  let best = 0;
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work(call);
    best = Math.max(best, (1000 * calls) / (performance.now() - start));
  }
  return best;
}
