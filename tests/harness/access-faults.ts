import type { Page } from 'playwright-core';
import { runAxe } from './axe';
import { contrastFaults } from './drawing-contrast';
import { focusFaults } from './focus-faults';

/** What a reader could not read or reach of a page with a drawing on it; empty where all is well. */
export async function accessFaults(page: Page): Promise<readonly unknown[]> {
  const drawn = await contrastFaults(page);
  const focused = await focusFaults(page);
  return [...drawn, ...focused, ...(await runAxe(page)).found];
}
