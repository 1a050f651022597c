import { describe, expect, it } from 'vitest';
import type { SavedPosition } from '../../../../src/store/saved-position';
import type { Elsewhere } from '../../../../src/store/tabs/elsewhere';
import { CUT, NINE_FOOT, openChoose } from './open-choose';

describe('taking back', () => {
  it('goes back and forth through every change', async () => {
    const { model, stored } = await openChoose();
    expect(model.canUndo.value).toBe(false);
    model.place(5, 0, 0, false);
    model.playBall(5);
    model.markZone({ xM: 0, yM: -0.3, radiusM: 0.2 });
    expect(model.canRedo.value).toBe(false);
    model.undo();
    expect(model.open.value).toMatchObject({ zone: null, goal: { ball: 5 } });
    model.undo();
    model.undo();
    expect(model.open.value.balls).toEqual(CUT.balls);
    expect(model.canUndo.value).toBe(false);
    model.undo();
    model.redo();
    model.redo();
    expect(model.open.value.goal.ball).toBe(5);
    await model.flush();
    expect((await stored())[0]).toMatchObject({ goal: { ball: 5 }, zone: null });
    model.playInto('far-left');
    expect(model.canRedo.value).toBe(false);
  });

  it('takes a whole drag back at once, and keeps it when the finger lifts', async () => {
    const { model, stored } = await openChoose();
    for (const xM of [-0.1, 0, 0.1]) model.drag('cue', xM, -0.6);
    expect(model.ballAt('cue')?.xM).toBe(0.1);
    await model.flush();
    model.endDrag();
    expect((await stored())[0]?.balls[0]).toEqual({ name: 'cue', xM: 0.1, yM: -0.6 });
    model.undo();
    expect(model.open.value.balls).toEqual(CUT.balls);
    expect(model.canUndo.value).toBe(false);
  });

  it('leaves no undo of a drag that is taken away, and takes no earlier change back', async () => {
    const { model, stored } = await openChoose();
    model.nudge(3, 0.05, 0);
    const before = model.open.value;
    model.drag('cue', 0.1, -0.6);
    model.cancelDrag();
    expect(model.open.value).toEqual(before);
    model.cancelDrag();
    model.drag('cue', -0.2, -0.6);
    model.cancelDrag();
    expect(model.open.value).toEqual(before);
    await model.flush();
    expect(await stored()).toContainEqual(before);
    model.undo();
    expect(model.open.value.balls).toEqual(CUT.balls);
    expect(model.canUndo.value).toBe(false);
  });

  it('counts nothing that changed nothing', async () => {
    const { model, stored } = await openChoose();
    model.drag('cue', 0, 0);
    model.drag('cue', -0.2, -0.6);
    model.endDrag();
    model.playBall(3);
    model.place('cue', -0.2, -0.6, false);
    expect(model.canUndo.value).toBe(false);
    expect(model.open.value).toEqual(CUT);
    await model.flush();
    expect(await stored()).toContainEqual(CUT);
  });

  it('keeps a history of its own for every position', async () => {
    const { model } = await openChoose();
    model.nudge('cue', 0.05, 0);
    model.openPosition('other');
    expect(model.canUndo.value).toBe(false);
    model.nudge('cue', 0, 0.05);
    model.openPosition('cut');
    model.undo();
    expect(model.open.value.balls).toEqual(CUT.balls);
    model.openPosition('other');
    expect(model.canUndo.value).toBe(true);
  });

  it('counts a held arrow as one change, and one taken away as none', async () => {
    const { model, stored } = await openChoose();
    model.nudge(3, 0.05, 0);
    const before = model.open.value;
    model.beginGesture();
    for (let steps = 0; steps < 5; steps++) model.nudge('cue', 0.01, 0);
    model.endGesture();
    model.undo();
    expect(model.open.value.balls).toEqual(before.balls);
    expect(model.canRedo.value).toBe(true);
    model.beginGesture();
    model.nudge('cue', 0.01, 0);
    model.endGesture(true);
    expect(model.open.value.balls).toEqual(before.balls);
    await model.flush();
    expect((await stored())[0]?.balls).toEqual(before.balls);
    model.redo();
    expect(model.ballAt('cue')?.xM).toBeCloseTo(-0.15, 12);
  });

  it('ends a press that goes on as another position is opened', async () => {
    const { model } = await openChoose();
    model.beginGesture();
    model.nudge('cue', 0.01, 0);
    model.openPosition('other');
    model.openPosition('cut');
    model.nudge('cue', 0.01, 0);
    model.undo();
    expect(model.ballAt('cue')?.xM).toBeCloseTo(-0.19, 12);
  });

  it('leaves an example an example where a drag is taken away', async () => {
    const { model } = await openChoose();
    model.drag('cue', 0.1, -0.6);
    expect(model.open.value.origin).toBe('by-hand');
    model.cancelDrag();
    expect(model.open.value).toEqual(CUT);
  });

  it('takes the drag back on the table it was made on, and what came before on its own', async () => {
    const { model, table } = await openChoose();
    model.nudge('cue', 0.1, 0);
    table.value = { ...NINE_FOOT, id: 'short', lengthM: 1.27, widthM: 0.635 };
    model.drag(8, 0, 0);
    model.endDrag();
    model.undo();
    expect(model.ballAt(8)).toEqual({ name: 8, xM: -0.2, yM: 0.45 });
    expect(model.ballAt('cue')?.xM).toBeCloseTo(-0.05, 12);
    model.undo();
    expect(model.ballAt('cue')?.xM).toBeCloseTo(-0.1, 12);
  });
});

describe('what another tab did to the position', () => {
  async function besideAnother() {
    const listeners: ((news: Elsewhere) => void)[] = [];
    const store = {
      onElsewhere(listener: (news: Elsewhere) => void) {
        listeners.push(listener);
        return () => {};
      },
    };
    const { model } = await openChoose({ store });
    const elsewhere = (part: Partial<SavedPosition>) => {
      const was = model.open.value;
      const row = { ...was, ...part };
      for (const tell of listeners) {
        tell({ kind: 'row', store: 'positions', id: was.id, was, row });
      }
    };
    return { model, elsewhere };
  }
  const ZONE = { xM: 0, yM: 0.5, radiusM: 0.3 };

  it('stays through undo and redo', async () => {
    const { model, elsewhere } = await besideAnother();
    model.takeOff(8);
    elsewhere({ zone: ZONE });
    model.undo();
    expect(model.open.value).toMatchObject({ balls: CUT.balls, zone: ZONE });
    model.redo();
    expect(model.ballAt(8)).toBeNull();
    expect(model.open.value.zone).toEqual(ZONE);
  });

  it('stays through a drag that is kept, taken back or taken away', async () => {
    const { model, elsewhere } = await besideAnother();
    model.drag('cue', 0.1, -0.6);
    elsewhere({ zone: ZONE });
    model.drag('cue', 0.2, -0.6);
    model.endDrag();
    expect(model.open.value.zone).toEqual(ZONE);
    model.undo();
    expect(model.open.value).toMatchObject({ balls: CUT.balls, zone: ZONE });
    model.drag('cue', 0.1, -0.6);
    elsewhere({ zone: null });
    model.cancelDrag();
    expect(model.open.value).toMatchObject({ balls: CUT.balls, zone: null });
  });
});
