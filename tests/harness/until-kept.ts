import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { PATIENCE_MS } from './patience';
import { readRawDatabase } from './raw-database';

const PATIENT = { timeout: PATIENCE_MS };

/** Waits until a store of the app's database holds a row with these fields, in any browser. */
export async function untilKept(
  page: Pick<Page, 'evaluate'>,
  store: string,
  fields: Readonly<Record<string, unknown>>,
): Promise<void> {
  await expect
    .poll(async () => (await readRawDatabase(page)).stores[store], PATIENT)
    .toContainEqual(expect.objectContaining(fields));
}

/** Waits until what stands on screen is kept: the desk with these parts, each as far as it is told. */
export const untilDeskKept = (page: Pick<Page, 'evaluate'>, parts: Record<string, object>) =>
  untilKept(
    page,
    'desk',
    Object.fromEntries(
      Object.entries(parts).map(([name, part]) => [name, expect.objectContaining(part)]),
    ),
  );
