import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { createSpeaking } from '../../../../../src/state/choose/all-ways/speaking';
import { CUT } from '../invented-choose';
import { openChoose, press } from '../open-choose';

afterEach(cleanup);

describe('saying what may be played', () => {
  it('leaves ball and pocket open, and picks what may be hit first', async () => {
    const { choose } = openChoose('#choose/play', CUT);
    press('Any ball');
    press('Any pocket');
    expect(choose.open.value.goal).toMatchObject({ ball: null, pocket: null });
    const rules = () => within(screen.getByRole('group', { name: 'May be hit first' }));
    const pressed = () =>
      rules()
        .getAllByRole('button', { pressed: true })
        .map((one) => one.textContent);
    await expect.poll(pressed).toEqual(['any']);
    rules().getByRole('button', { name: 'the lowest' }).click();
    expect(choose.open.value.legal).toBe('lowest');
    await expect.poll(pressed).toEqual(['the lowest']);
    rules().getByRole('button', { name: 'pick…' }).click();
    expect(choose.open.value.legal).toEqual([3, 8, 11, 12]);
    const eight = () => screen.queryByRole('button', { name: '8 ball may be hit first' });
    await expect.poll(eight).toBeTruthy();
    eight()?.click();
    expect(choose.open.value.legal).toEqual([3, 11, 12]);
    await expect.poll(() => eight()?.getAttribute('aria-pressed')).toBe('false');
  });
});

describe('reading a way aloud', () => {
  it('says each sentence in place of the one before, and no more once left', async () => {
    const said: string[] = [];
    const ends: (() => void)[] = [];
    const speaking = createSpeaking({
      say(sentence, ended) {
        said.push(sentence);
        ends.push(ended);
      },
      hush: () => void said.push('hush'),
    });
    expect(speaking.canSpeak).toBe(true);
    speaking.speak('One.');
    speaking.speak('Two.');
    // The first was cut short, which ends it; the second goes on.
    ends[0]?.();
    expect(speaking.isSpeaking.value).toBe(true);
    ends[1]?.();
    expect(speaking.isSpeaking.value).toBe(false);
    speaking.speak('Three.');
    speaking.hush();
    expect(speaking.isSpeaking.value).toBe(false);
    expect(said).toEqual(['One.', 'Two.', 'Three.', 'hush']);
  });
});
