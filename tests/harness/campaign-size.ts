/** Whether the whole campaigns are asked for (`npm run soak`) and not the sample of every test run. */
export const WHOLE = import.meta.env.MODE === 'soak';

/** How many cases a seeded campaign takes: a sample by default, the whole under soak. */
export function campaignSize(sample: number, whole: number): number {
  return WHOLE ? whole : sample;
}

/** Time for a campaign, ms: a net for one that hangs, wide enough for any machine and all that runs beside it. */
export const CAMPAIGN_TIMEOUT_MS = WHOLE ? 43_200_000 : 600_000;

/** Prints a figure of a whole campaign; a sample's would say little. */
export function tell(line: string): void {
  if (WHOLE) process.stdout.write(`${line}\n`);
}
