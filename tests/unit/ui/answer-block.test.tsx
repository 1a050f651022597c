import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import type { LaidShot } from '../../../src/store/records';
import type { AppModels } from '../../../src/ui/app-models';
import { AnswerBlock } from '../../../src/ui/shot/AnswerBlock';
import { openShot } from '../state/open-shot';

afterEach(cleanup);

/** The answer to a shot, whose readings are still being worked out until told otherwise. */
function open(shot: Partial<LaidShot>) {
  const isSettled = signal(false);
  const { model, desk, kit } = openShot(shot, {}, { isKitSettled: isSettled });
  const room = { room: signal(null), isFresh: signal(false) };
  const app = { shot: model, measure: { isSettled }, kit: { kit }, desk, room };
  const { container } = render(<AnswerBlock app={app as unknown as AppModels} />);
  const text = () => container.querySelector('.answer')?.textContent ?? '';
  const isGrey = () => container.querySelector('.answer-figures.is-stale') !== null;
  return { model, isSettled, text, isGrey };
}

describe('an answer that may still change by itself', () => {
  it('is grey and says why, until it stands', async () => {
    const { model, isSettled, text, isGrey } = open({ speedMps: 2 });
    expect(model.stale.value).toBe(true);
    expect(isGrey()).toBe(true);
    expect(text()).toMatch(/^Working out what your readings tell\. Before that:/);
    isSettled.value = true;
    await expect.poll(isGrey).toBe(false);
    expect(text()).not.toContain('Working out');
  });

  it('refuses nothing, and warns of nothing', async () => {
    const { isSettled, text } = open({ speedMps: 0.05 });
    expect(text()).toBe('Working out what your readings tell. Before that:');
    isSettled.value = true;
    await expect.poll(text).toMatch(/^⊘ The cue ball comes to rest/);
    const raised = open({ elevationRad: 0.3 });
    expect(raised.model.warnings.value).toEqual([]);
    raised.isSettled.value = true;
    expect(raised.model.warnings.value).toContainEqual({ kind: 'raised-cue' });
  });
});
