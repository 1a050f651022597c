import { describe, expect, it } from 'vitest';
import { openKit } from './open-kit';

const HOUSE = 'demo-cue-house';

describe('a change that cannot be saved', () => {
  it('stays on screen and says so, until one can', async () => {
    let room = false;
    const { kit } = await openKit({
      put: async () => (room ? { ok: true } : { ok: false, reason: 'full' }),
    });
    kit.edit('cues', HOUSE, 'massRatio', 30);
    await kit.flush();
    expect(kit.kit.value.massRatio).toBe(30);
    expect(kit.saveProblem.value).toMatch(/^No room left/);
    room = true;
    kit.edit('cues', HOUSE, 'massRatio', 31);
    await kit.flush();
    expect(kit.saveProblem.value).toBeNull();
  });

  it('is tried again by itself when the rest is saved, and told of until then', async () => {
    let room = false;
    const saved: string[] = [];
    const { kit } = await openKit({
      put: async (_, { id }) => {
        if (!room && id === HOUSE) return { ok: false, reason: 'full' };
        saved.push(id);
        return { ok: true };
      },
    });
    kit.edit('cues', HOUSE, 'massRatio', 30);
    kit.edit('cues', 'demo-cue-stiff', 'massRatio', 51);
    await kit.flush();
    expect(kit.saveProblem.value).toMatch(/^No room left/);
    room = true;
    await kit.flush();
    expect(saved).toEqual(['demo-cue-stiff', HOUSE]);
    expect(kit.saveProblem.value).toBeNull();
    await kit.flush();
    expect(saved).toHaveLength(2);
  });
});
