import { describe, expect, it } from 'vitest';
import { directCut } from '../../../../src/engine/goal/goal';
import { NOTHING_CHOSEN } from '../../../../src/store/saved-position';
import { answerAll, answerOne, CUT, openChoose, settle } from './open-choose';

const UNCHOSEN = { ...CUT, goal: NOTHING_CHOSEN };

type Opened = Awaited<ReturnType<typeof openChoose>>;
const names = ({ hired }: Opened) => hired.flatMap(({ asked }) => asked.map(({ name }) => name));
const count = (opened: Opened, name: string) => names(opened).filter((one) => one === name).length;

describe('what Choose works out by itself', () => {
  it('begins once ball and pocket are chosen and all is at rest, not before', async () => {
    const opened = await openChoose({ positions: [UNCHOSEN] });
    const { model, rest } = opened;
    model.attend();
    rest();
    expect(names(opened)).toEqual([]);
    model.playBall(3);
    expect(names(opened)).toEqual([]);
    rest();
    expect(names(opened)).toEqual(['pockets']);
    model.playInto('far-right');
    expect(model.comparison.value.state).toBe('none');
    rest();
    expect(model.comparison.value.state).toBe('running');
    await answerAll(opened.hired);
    expect(model.comparison.value.state).toBe('done');
  });

  it('looks at the pockets alone while balls are laid, for the one selected, not under the hand', async () => {
    const opened = await openChoose();
    const { model, rest, hired } = opened;
    model.attend(true);
    rest();
    model.select('cue');
    rest();
    expect(names(opened)).toEqual([]);
    model.select(8);
    expect(model.tried.value).toBe(8);
    rest();
    await answerAll(hired);
    expect(names(opened)).toEqual(['pockets']);
    expect(model.chances.value?.size).toBe(6);
    expect(model.open.value.goal.ball).toBe(3);
    const { xM = 0, yM = 0 } = model.ballAt(8) ?? {};
    model.drag(8, xM + 0.05, yM);
    rest();
    expect(model.chances.value).toBeNull();
    expect(names(opened)).toEqual(['pockets']);
    model.endDrag();
    rest();
    expect(names(opened)).toEqual(['pockets', 'pockets']);
    model.select(null);
    expect(model.tried.value).toBe(3);
  });

  it('does nothing more once nobody attends', async () => {
    const opened = await openChoose();
    const leave = opened.model.attend();
    leave();
    opened.rest();
    opened.model.nudge('cue', 0.02, 0);
    opened.rest();
    expect(names(opened)).toEqual([]);
  });

  it('drops a comparison as soon as something else is asked, and begins anew at rest', async () => {
    const opened = await openChoose();
    const { model, hired, rest } = opened;
    model.attend();
    rest();
    await settle();
    answerOne(hired);
    await settle();
    expect(model.comparison.value.state).toBe('running');
    model.nudge('cue', 0.02, 0);
    expect(model.comparison.value).toMatchObject({ state: 'none', map: null });
    const before = count(opened, 'sweep');
    await answerAll(hired);
    expect(count(opened, 'sweep')).toBe(before);
    rest();
    await answerAll(hired);
    expect(model.comparison.value).toMatchObject({ state: 'done', isStale: false });
  });

  it('asks once for the pockets and once for the ways, however much was changed before', async () => {
    const opened = await openChoose();
    const { model, hired, rest } = opened;
    model.attend();
    for (let step = 0; step < 20; step++) model.nudge('cue', 0.005, 0);
    rest();
    rest();
    await answerAll(hired);
    expect(count(opened, 'pockets')).toBe(1);
    expect(count(opened, 'pick')).toBe(1);
    model.rename('cut', 'Renamed');
    rest();
    expect(count(opened, 'pockets')).toBe(1);
  });

  it('leaves a comparison stopped that was stopped, until something else is asked', async () => {
    const { model, rest } = await openChoose();
    model.attend();
    rest();
    model.stop();
    rest();
    expect(model.comparison.value.state).toBe('stopped');
    model.playInto('far-left');
    model.playInto('far-right');
    rest();
    expect(model.comparison.value.state).toBe('stopped');
    model.nudge('cue', 0.02, 0);
    rest();
    expect(model.comparison.value.state).toBe('running');
  });

  it('takes no way away that is looked at while more is learnt of who plays', async () => {
    const { model, hired, knowledge, rest } = await openChoose();
    model.attend();
    rest();
    await answerAll(hired);
    model.choose(model.comparison.value.ways[0] ?? null);
    const known = knowledge.value;
    knowledge.value = { ...known, spread: { ...known.spread, massRatio: 0.01 } };
    rest();
    expect(model.chosen.value).not.toBeNull();
    // The chance alone waits, and what is looked at is aimed and logged all the while.
    expect(model.isChanceStale.value).toBe(true);
    expect(model.toLog.value).not.toBeNull();
    expect(model.sendToShot()).toBe(true);
    const place = model.chosen.value?.option.place;
    await answerAll(hired);
    expect(model.comparison.value).toMatchObject({ state: 'done', isStale: false });
    expect(model.isChanceStale.value).toBe(false);
    expect(model.chosen.value?.option.place).toBe(place);
  });
});

describe('the chances of the pockets', () => {
  it('are told of the ball to be played, before any pocket is chosen', async () => {
    const { model, hired, rest } = await openChoose({ positions: [UNCHOSEN] });
    model.attend();
    model.playBall(3);
    expect(model.chances.value).toBeNull();
    rest();
    await answerAll(hired);
    expect(model.chances.value?.size).toBe(6);
    expect(hired[0]?.asked[0]?.job).toMatchObject({ goal: { ball: 3 }, position: CUT.balls });
  });

  it('stay where the pocket changes, and go where a ball moves', async () => {
    const opened = await openChoose();
    const { model, hired, rest } = opened;
    model.attend();
    rest();
    await answerAll(hired);
    const before = model.chances.value;
    expect(before?.size).toBe(6);
    model.playInto('far-left');
    expect(model.open.value.goal).toEqual(directCut(3, 'far-left'));
    expect(model.chances.value).toBe(before);
    model.nudge(8, 0.02, 0);
    expect(model.chances.value).toBeNull();
    rest();
    await answerAll(hired);
    expect(model.chances.value?.size).toBe(6);
    expect(count(opened, 'pockets')).toBe(2);
  });

  it('are none where the browser has no workers', async () => {
    const { model } = await openChoose({ workers: 0 });
    expect(model.chances.value?.size).toBe(0);
  });
});
