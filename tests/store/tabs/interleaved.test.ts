import fc from 'fast-check';
import { openDB } from 'idb';
import { expect, it } from 'vitest';
import type { Cue } from '../../../src/store/records';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../../harness/campaign-size';
import { openDevice, type Tab } from './open-tabs';

const FIELDS = ['massRatio', 'tipDiameterM', 'tipRadiusM'] as const;
const CUES = ['demo-cue-house', 'demo-cue-stiff'] as const;

/** What a hand does next in one of two tabs, or that the news between them arrive. */
const step = fc.oneof(
  { weight: 6, arbitrary: fc.record({ tab: fc.nat(1), cue: fc.nat(1), field: fc.nat(2) }) },
  { weight: 2, arbitrary: fc.constant('deliver' as const) },
  { weight: 1, arbitrary: fc.constant('wait' as const) },
);

type Step = typeof step extends fc.Arbitrary<infer S> ? S : never;
type Field = (typeof FIELDS)[number];

/** A figure in range that no other edit gives: which edit it was can be told from it. */
const figureOf = (field: Field, count: number) =>
  field === 'massRatio' ? 10 + count / 100 : 0.008 + count / 1e6;

async function keptCues(): Promise<readonly Cue[]> {
  const raw = await openDB('leeway');
  const cues: readonly Cue[] = await raw.getAll('cues');
  raw.close();
  return cues;
}

/** Two tabs at one device, and what was asked of them. */
async function twoHands() {
  const device = openDevice();
  const tabs: readonly Tab[] = [await device.openTab(), await device.openTab()];
  /** Figures that a tab changed after it had seen them: they need not be kept. */
  const seen = new Set<number>();
  const given = new Map<string, number[]>();
  let count = 0;
  const edit = (tab: Tab | undefined, id = '', field: Field = 'massRatio') => {
    const cue = tab?.screen.cue(id);
    if (!tab || !cue) return;
    count += 1;
    seen.add(cue[field]);
    const figure = figureOf(field, count);
    given.set(`${id} ${field}`, [...(given.get(`${id} ${field}`) ?? []), figure]);
    void tab.screen.edit(cue, { [field]: figure });
  };
  const go = async (now: Step) => {
    if (now === 'deliver') await device.settle();
    else if (now === 'wait') await tabs[0]?.screen.rest();
    else edit(tabs[now.tab], CUES[now.cue], FIELDS[now.field]);
  };
  return { tabs, seen, given, go, settle: device.settle };
}

it(
  'two tabs whose edits interleave lose no field of either, however late they hear',
  async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 14 }), async (steps) => {
        const { tabs, seen, given, go, settle } = await twoHands();
        for (const now of steps) await go(now);
        await settle();
        const kept = await keptCues();
        for (const [key, figures] of given) {
          const [id = '', field] = key.split(' ') as [string, Field];
          const stands = kept.find((cue) => cue.id === id)?.[field];
          const copies = kept.filter((cue) => cue.id.startsWith(`${id}-`));
          const found = [stands, ...copies.map((cue) => cue[field])];
          expect(found).toEqual(expect.arrayContaining(figures.filter((one) => !seen.has(one))));
          expect(figures).toContain(stands);
        }
        for (const { screen } of tabs) {
          const shown = screen.ids('cues').map((id) => screen.cue(id ?? ''));
          expect(shown.sort(byId)).toEqual([...kept].sort(byId));
        }
      }),
      { numRuns: campaignSize(15, 1000) },
    );
  },
  CAMPAIGN_TIMEOUT_MS,
);

function byId(one: Cue | null, other: Cue | null): number {
  return (one?.id ?? '') < (other?.id ?? '') ? -1 : 1;
}
