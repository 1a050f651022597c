import { describe, expect, it } from 'vitest';
import { CUT, OTHER, openChoose } from './open-choose';

const names = (positions: readonly { readonly name: string }[]) =>
  positions.map(({ name }) => name);

describe('the positions', () => {
  it('open with the one changed last', async () => {
    const { model } = await openChoose();
    expect(names(model.saved.value)).toEqual(['A cut', 'Another']);
    expect(model.open.value.id).toBe('cut');
  });

  it('open with an empty one where there is none, which is kept from the first ball on', async () => {
    const { model, stored } = await openChoose({ positions: [] });
    expect(model.saved.value).toEqual([]);
    expect(model.open.value).toMatchObject({ name: 'Position 1', balls: [], lengthM: 2.54 });
    expect(model.place('cue', 0, 0, false)).toEqual({ ok: true });
    await model.flush();
    expect(await stored()).toMatchObject([{ name: 'Position 1', balls: [{ name: 'cue' }] }]);
    expect(names(model.saved.value)).toEqual(['Position 1']);
  });

  it('come first once they are opened', async () => {
    const { model } = await openChoose();
    expect(model.openPosition('other')).toEqual({ ok: true });
    expect(model.open.value.id).toBe('other');
    expect(names(model.saved.value)).toEqual(['Another', 'A cut']);
    expect(model.openPosition('gone')).toMatchObject({ ok: false });
    expect(model.problem.value).toMatch(/no longer here/);
  });

  it('gain a new one, empty, opened and kept, under a name that is free', async () => {
    const { model, stored } = await openChoose();
    const [first, second] = [model.add(), model.add()];
    expect(model.open.value).toMatchObject({ id: second, name: 'Position 2', balls: [] });
    expect(names(model.saved.value)).toEqual(['Position 2', 'Position 1', 'A cut', 'Another']);
    await model.flush();
    expect((await stored()).map(({ id }) => id)).toEqual([second, first, 'cut', 'other']);
  });

  it('are copied under another name, an invented one staying invented', async () => {
    const { model, stored } = await openChoose();
    expect(model.duplicate('cut')).toEqual({ ok: true });
    expect(model.open.value.id).toBe('cut');
    await model.flush();
    const [copy] = await stored();
    expect(copy).toMatchObject({ name: 'A cut (copy)', origin: 'invented', balls: CUT.balls });
    expect(copy?.id).not.toBe('cut');
  });

  it('take another name, but not an empty or endless one', async () => {
    const { model, stored } = await openChoose();
    expect(model.rename('other', '  Long pot ')).toEqual({ ok: true });
    expect(model.rename('other', ' ')).toEqual({ ok: false, problem: 'Give it a name.' });
    expect(model.rename('other', 'x'.repeat(61))).toMatchObject({ ok: false });
    await model.flush();
    expect(names(await stored())).toContain('Long pot');
    expect(names(model.saved.value)).toEqual(['A cut', 'Long pot']);
  });

  it('lose one and get it back', async () => {
    const { model, stored } = await openChoose();
    expect(model.restore()).toMatchObject({ ok: false });
    model.remove('cut');
    expect(model.open.value.id).toBe('other');
    await model.flush();
    expect(await stored()).toEqual([OTHER]);
    expect(model.restore()).toEqual({ ok: true });
    await model.flush();
    expect(await stored()).toEqual([CUT, OTHER]);
    expect(model.open.value.id).toBe('other');
  });

  it('leave an empty one open when the last is removed', async () => {
    const { model, stored } = await openChoose({ positions: [CUT] });
    model.remove('cut');
    expect(model.open.value.balls).toEqual([]);
    await model.flush();
    expect(await stored()).toEqual([]);
  });

  it('tell of a change that could not be saved, and try it again', async () => {
    let isFull = true;
    const put: unknown[] = [];
    const { model } = await openChoose({
      store: {
        async put(_list, position) {
          if (isFull) return { ok: false, reason: 'full' };
          put.push(position);
          return { ok: true };
        },
      },
    });
    model.rename('cut', 'Renamed');
    await model.flush();
    expect(model.problem.value).toMatch(/^No room left/);
    isFull = false;
    await model.flush();
    expect(model.problem.value).toBeNull();
    expect(put).toMatchObject([{ name: 'Renamed' }]);
  });
});
