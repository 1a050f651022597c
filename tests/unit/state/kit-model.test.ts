import { effect } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { failureWords } from '../../../src/words/failure-words';
import { openKit } from './open-kit';

const HOUSE = 'demo-cue-house';

describe('the kit in play', () => {
  it('is the default one at first, and says so', async () => {
    const { kit } = await openKit();
    expect(kit.kit.value).toEqual(DEFAULT_KIT);
    expect(kit.isDefault.value).toBe(true);
  });

  it('follows the choice, which is kept', async () => {
    const { kit, reload } = await openKit();
    expect(kit.choose('cues', 'demo-cue-stiff')).toEqual({ ok: true });
    expect(kit.current.cues.value.name).toBe('Stiff cue');
    expect(kit.kit.value.massRatio).toBe(12);
    expect(kit.isDefault.value).toBe(true);
    expect((await reload()).desk.choice.cues).toBe('demo-cue-stiff');
  });

  it('does not follow to what is not there', async () => {
    const { kit } = await openKit();
    expect(kit.choose('cues', 'sold')).toMatchObject({ ok: false });
    expect(kit.current.cues.value.id).toBe(HOUSE);
  });

  it('is the person’s own once a number of a record in play is', async () => {
    const { kit } = await openKit();
    const copied = kit.copy('tables', 'demo-table-9ft');
    const id = copied.ok ? copied.id : '';
    kit.choose('tables', id);
    expect(kit.isDefault.value).toBe(true);
    expect(kit.defaults.value).toEqual(['cues', 'cloths', 'balls', 'tables']);
    kit.edit('tables', id, 'lengthM', 2.5);
    expect(kit.isDefault.value).toBe(false);
    expect(kit.defaults.value).toEqual(['cues', 'cloths', 'balls']);
  });
});

describe('copying', () => {
  it('adds a copy to the shelf, keeps it, and leaves what is in play', async () => {
    const { kit, reload } = await openKit();
    expect(kit.copy('cues', HOUSE)).toEqual({ ok: true, id: 'new-1' });
    const { cues, desk } = await reload();
    expect(cues.at(-1)).toEqual({
      ...kit.current.cues.value,
      id: 'new-1',
      name: 'House cue (copy)',
      like: HOUSE,
    });
    expect(desk.choice.cues).toBe(HOUSE);
  });

  it('of what is not there is refused', async () => {
    const { kit } = await openKit();
    expect(kit.copy('cues', 'sold')).toMatchObject({ ok: false });
  });
});

describe('changing a number', () => {
  it('reaches the kit and the store, and makes the record the person’s own', async () => {
    const { kit, reload } = await openKit();
    expect(kit.edit('cues', HOUSE, 'massRatio', 27.5)).toEqual({ ok: true });
    expect(kit.kit.value.massRatio).toBe(27.5);
    expect(kit.isDefault.value).toBe(false);
    const stored = (await reload()).cues.find(({ id }) => id === HOUSE);
    expect(stored).toMatchObject({ massRatio: 27.5, origin: 'by-hand', name: 'House cue' });
  });

  it('reaches numbers that are nested', async () => {
    const { kit } = await openKit();
    kit.edit('balls', 'demo-balls-clean', 'ballFriction.a', 0.02);
    kit.edit('tables', 'demo-table-9ft', 'bedSlope.rightM_per_M', -0.001);
    expect(kit.kit.value.ballFriction).toEqual({ ...DEFAULT_KIT.ballFriction, a: 0.02 });
    expect(kit.kit.value.bedSlope).toEqual({ alongM_per_M: 0, rightM_per_M: -0.001 });
  });

  it('out of range is refused in the unit shown, and changes nothing', async () => {
    const { kit } = await openKit();
    expect(kit.edit('cues', HOUSE, 'tipDiameterM', 0.02)).toEqual({
      ok: false,
      problem: 'Tip diameter: The most is 15 mm.',
    });
    expect(kit.edit('cues', HOUSE, 'massRatio', Number.NaN)).toMatchObject({ ok: false });
    expect(kit.isDefault.value).toBe(true);
  });

  it('takes what is typed in the unit shown', async () => {
    const { kit } = await openKit();
    expect(kit.enter('cues', HOUSE, 'tipDiameterM', '12,5 mm')).toEqual({ ok: true });
    expect(kit.current.cues.value.tipDiameterM).toBe(0.0125);
    expect(kit.enter('cues', HOUSE, 'tipDiameterM', 'wide')).toEqual({
      ok: false,
      problem: 'Use figures only, such as 1.15 or 1 1/2.',
    });
    expect(kit.enter('cues', HOUSE, 'shine', '1')).toMatchObject({ ok: false });
    expect(kit.enter('cues', 'sold', 'massRatio', '20')).toMatchObject({ ok: false });
  });

  it('typed as it already shows leaves the record alone, hidden digits too', async () => {
    const { kit } = await openKit();
    const before = kit.shelves.balls.value.find(({ id }) => id === 'demo-balls-dirty');
    expect(before?.ballFriction.a).toBe(0.014925);
    expect(kit.enter('balls', 'demo-balls-dirty', 'ballFriction.a', '0.01493')).toEqual({
      ok: true,
    });
    expect(kit.shelves.balls.value.find(({ id }) => id === 'demo-balls-dirty')).toBe(before);
  });

  it('puts a number back as it was remembered, and as nobody’s own', async () => {
    const { kit, reload } = await openKit();
    const before = kit.current.cues.value;
    const putBack = kit.remember('cues', HOUSE, 'tipDiameterM');
    kit.nudge('cues', HOUSE, 'tipDiameterM', 1);
    expect(kit.current.cues.value).not.toEqual(before);
    putBack();
    expect(kit.current.cues.value).toEqual(before);
    expect((await reload()).cues).toContainEqual(before);
  });

  it('nudges by steps a person can follow, and stops at the end', async () => {
    const { kit } = await openKit();
    kit.nudge('cues', HOUSE, 'tipDiameterM', -1);
    expect(kit.current.cues.value.tipDiameterM).toBe(0.0129);
    kit.nudge('cues', HOUSE, 'tipDiameterM', 1, true);
    expect(kit.current.cues.value.tipDiameterM).toBe(0.013);
    for (let times = 0; times < 10; times += 1) kit.nudge('cues', HOUSE, 'tipDiameterM', 1, true);
    expect(kit.current.cues.value.tipDiameterM).toBe(0.015);
  });

  it('shows every number of a record with a name, a unit and a range around it', async () => {
    const { kit } = await openKit();
    for (const shelf of ['cues', 'cloths', 'balls', 'tables'] as const) {
      const figures = kit.figures(shelf, kit.current[shelf].value.id);
      expect(figures.length).toBeGreaterThanOrEqual(3);
      for (const { label, hint, figure, range } of figures) {
        expect(label).not.toBe('');
        expect(hint).toMatch(/\.$/);
        expect(figure).toBeGreaterThanOrEqual(range.min);
        expect(figure).toBeLessThanOrEqual(range.max);
      }
    }
    expect(kit.figures('cues', 'sold')).toEqual([]);
  });
});

describe('renaming', () => {
  it('trims the name and keeps where the numbers come from', async () => {
    const { kit, reload } = await openKit();
    expect(kit.rename('cues', HOUSE, '  Mine ')).toEqual({ ok: true });
    expect(kit.current.cues.value).toMatchObject({ name: 'Mine', origin: 'invented' });
    expect((await reload()).cues.map(({ name }) => name)).toContain('Mine');
  });

  it.each(['', '   ', 'x'.repeat(61)])('refuses %j', async (name) => {
    const { kit } = await openKit();
    expect(kit.rename('cues', HOUSE, name)).toMatchObject({ ok: false });
    expect(kit.current.cues.value.name).toBe('House cue');
  });
});

describe('deleting', () => {
  it('what is in play brings the next into play, and both are kept', async () => {
    const { kit, idsOn, reload } = await openKit();
    expect(kit.remove('cues', HOUSE)).toEqual({ ok: true });
    expect(idsOn('cues')).not.toContain(HOUSE);
    expect(kit.current.cues.value.id).toBe('demo-cue-low');
    const { cues, desk } = await reload();
    expect(cues.map(({ id }) => id)).toEqual(idsOn('cues'));
    expect(desk.choice.cues).toBe('demo-cue-low');
  });

  it('what is not in play leaves the choice', async () => {
    const { kit } = await openKit();
    kit.remove('cues', 'demo-cue-stiff');
    expect(kit.current.cues.value.id).toBe(HOUSE);
  });

  it('never shows a kit that is neither the old nor the new', async () => {
    const { kit } = await openKit();
    const seen: number[] = [];
    const stop = effect(() => {
      seen.push(kit.kit.value.massRatio);
    });
    kit.remove('cues', HOUSE);
    kit.restore();
    stop();
    expect(seen).toEqual([22, 38, 22]);
  });

  it('the last one is refused', async () => {
    const { kit, idsOn } = await openKit();
    const [first, ...others] = idsOn('cloths');
    for (const id of others) expect(kit.remove('cloths', id)).toEqual({ ok: true });
    expect(kit.remove('cloths', first ?? '')).toEqual({
      ok: false,
      problem: failureWords('last-on-shelf'),
    });
    expect(idsOn('cloths')).toEqual([first]);
  });

  it('of what is not there is refused', async () => {
    const { kit } = await openKit();
    expect(kit.remove('cues', 'sold')).toMatchObject({ ok: false });
  });

  it('is taken back when the stored shelf has nothing else left', async () => {
    const { kit, idsOn } = await openKit({
      delete: async () => ({ ok: false, reason: 'last-on-shelf' }),
    });
    kit.remove('cues', 'demo-cue-stiff');
    await kit.flush();
    expect(idsOn('cues')).toContain('demo-cue-stiff');
    expect(kit.saveProblem.value).toBe(failureWords('last-on-shelf'));
  });
});

describe('putting back what was deleted', () => {
  it('puts it in its place and into play, and keeps it', async () => {
    const { kit, idsOn, reload } = await openKit();
    const before = idsOn('cues');
    kit.remove('cues', HOUSE);
    expect(kit.lastDeleted.value).toMatchObject({ shelf: 'cues', wasInPlay: true });
    expect(kit.restore()).toEqual({ ok: true });
    expect(idsOn('cues')).toEqual(before);
    expect(kit.current.cues.value.id).toBe(HOUSE);
    expect(kit.lastDeleted.value).toBeNull();
    const { cues, desk } = await reload();
    expect(cues).toEqual(DEMO_CATALOGUE.cues);
    expect(desk.choice.cues).toBe(HOUSE);
  });

  it('does not put it into play when it was not', async () => {
    const { kit } = await openKit();
    kit.remove('cues', 'demo-cue-stiff');
    kit.restore();
    expect(kit.current.cues.value.id).toBe(HOUSE);
  });

  it('is refused when nothing was deleted', async () => {
    const { kit } = await openKit();
    expect(kit.restore()).toMatchObject({ ok: false });
  });
});
