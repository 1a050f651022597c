import { describe, expect, it } from 'vitest';
import { auditAnswers } from '../harness/audit-answers';
import { CAMPAIGN_TIMEOUT_MS, campaignSize } from '../harness/campaign-size';

const COUNT = campaignSize(6000, 1_000_000);

describe('hostile questions', () => {
  it(
    'are answered soundly or refused in words, whatever they hold',
    () => {
      const { findings, outcomes } = auditAnswers(20, COUNT);
      expect(findings.slice(0, 5)).toEqual([]);
      // They do get to the engine, and to every way it can end.
      expect(outcomes.answered ?? 0).toBeGreaterThan(COUNT / 10);
      for (const reason of [
        'out-of-range',
        'beyond-miscue-limit',
        'never-stops',
        'stops-short',
        'flies-over',
        'too-thin',
        'object-ball-cannot-reach',
      ]) {
        expect(outcomes[reason] ?? 0).toBeGreaterThan(COUNT / 1000);
      }
    },
    CAMPAIGN_TIMEOUT_MS,
  );
});
