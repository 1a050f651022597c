import { computed } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { createRoomModel } from '../../../src/state/room-model';
import type { LaidShot } from '../../../src/store/records';
import { AnswerBlock } from '../../../src/ui/shot/AnswerBlock';
import { openMeasure } from '../state/measure/open-measure';
import { openShot } from '../state/open-shot';
import { openPlayer } from '../state/player/open-player';

afterEach(cleanup);

/** The answer to a shot, with a reading that is still being worked out until told otherwise. */
async function open(shot: Partial<LaidShot>) {
  const { measure, kit, desk, shootLine, rest } = await openMeasure();
  desk.setShot({ ...desk.shot.value, ...shot });
  shootLine();
  const { model } = openShot({}, {}, { desk, kit: kit.kit, isKitSettled: measure.isSettled });
  const { player } = await openPlayer();
  const room = createRoomModel({
    lastAnswer: model.lastAnswer,
    desk,
    player,
    known: measure.knowledge,
    spreadBefore: computed(() => measure.before.value.spread),
    assess: () => () => {},
    later: () => () => {},
  });
  const { container } = render(
    <AnswerBlock app={{ shot: model, measure, kit, desk, room, player }} />,
  );
  const text = () => container.querySelector('.answer')?.textContent ?? '';
  const isGrey = () => container.querySelector('.answer-figures.is-stale') !== null;
  return { model, settle: rest, text, isGrey };
}

describe('an answer that may still change by itself', () => {
  it('is grey and says why, until it stands', async () => {
    const { model, settle, text, isGrey } = await open({ speedMps: 2 });
    expect(model.stale.value).toBe(true);
    expect(isGrey()).toBe(true);
    expect(text()).toMatch(/^Working out what your readings tell\. Before that:/);
    await settle();
    await expect.poll(isGrey).toBe(false);
    expect(text()).not.toContain('Working out');
  });

  it('refuses nothing, and warns of nothing', async () => {
    const { settle, text } = await open({ speedMps: 0.05 });
    expect(text()).toBe('Working out what your readings tell. Before that:');
    await settle();
    await expect.poll(text).toMatch(/^⊘ The cue ball comes to rest/);
    const raised = await open({ elevationRad: 0.3 });
    expect(raised.model.warnings.value).toEqual([]);
    await raised.settle();
    expect(raised.model.warnings.value).toContainEqual({ kind: 'raised-cue' });
  });
});
