import { signal } from '@preact/signals';
import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { ENTRY_SPECS, type EntryName } from '../../../../src/ui/measure/entry-specs';
import { Keypad } from '../../../../src/ui/measure/Keypad';
import { type KeypadDraft, keyed } from '../../../../src/ui/measure/keypad-draft';
import { TapPad } from '../../../../src/ui/measure/TapPad';
import type { Entry } from '../../../../src/ui/measure/use-entry';

afterEach(cleanup);

/** An entry whose draft lives in a signal, and how often it was submitted. */
function setUp(name: EntryName, draft: Partial<KeypadDraft> = {}) {
  const kept = signal<KeypadDraft>({ figure: '', unit: 'cm', word: '', ...draft });
  const submitted = signal(0);
  const change = (part: Partial<KeypadDraft>) => {
    kept.value = { ...kept.peek(), ...part };
  };
  const entryNow = (): Entry => ({
    spec: ENTRY_SPECS[name],
    draft: kept.value,
    press: (key) => change(keyed(kept.peek(), key)),
    choose: (word) => change({ word }),
    setUnit: (unit) => change({ unit }),
    setTapped: (seconds) => change({ figure: seconds.toFixed(2), unit: 's', word: 'tapped' }),
    clear: () => change({ figure: '', word: '' }),
    submit: () => {
      submitted.value++;
    },
    confirm: null,
  });
  return { kept, submitted, entryNow };
}

const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));

describe('a keypad', () => {
  function open(name: EntryName, draft: Partial<KeypadDraft> = {}) {
    const all = setUp(name, draft);
    const Shown = () => <Keypad entry={all.entryNow()} onTap={null} />;
    render(<Shown />);
    return all;
  }

  it('takes a figure, its way and its unit by the thumb', () => {
    const { kept, submitted } = open('landingM');
    press('1');
    press('2');
    press('.');
    press('5');
    press('Delete a digit');
    press('left');
    fireEvent.change(screen.getByRole('combobox', { name: 'Unit' }), { target: { value: 'mm' } });
    press('Enter');
    expect(kept.value).toEqual({ figure: '12.', unit: 'mm', word: 'left' });
    expect(submitted.value).toBe(1);
  });

  it('shows what stands there, its way as a word', async () => {
    open('cueBallM', { figure: '7.5', word: 'back' });
    expect(screen.getByLabelText('Figure').textContent).toMatch(/^7\.5.*back/);
    expect(screen.getByRole('button', { name: 'back' }).getAttribute('aria-pressed')).toBe('true');
  });

  it('offers no way where there is but one', () => {
    open('bridgeM');
    expect(screen.queryByRole('button', { name: 'left' })).toBeNull();
    expect(screen.queryByRole('button', { name: 'on' })).toBeNull();
  });

  it('hears a keyboard’s digits, comma, way, backspace and Enter', () => {
    const { kept, submitted } = open('landingM');
    for (const key of ['1', ',', '2', '5', 'Backspace', 'r']) fireEvent.keyDown(window, { key });
    expect(kept.value).toEqual({ figure: '1.2', unit: 'cm', word: 'right' });
    fireEvent.keyDown(window, { key: '-' });
    expect(kept.value.word).toBe('left');
    fireEvent.keyDown(window, { key: 'Enter' });
    expect(submitted.value).toBe(1);
  });

  it('leaves Enter on a button to that button, and shortcuts to the browser', () => {
    const { kept, submitted } = open('landingM');
    fireEvent.keyDown(screen.getByRole('button', { name: '7' }), { key: 'Enter' });
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    expect(submitted.value).toBe(0);
    expect(kept.value.figure).toBe('');
  });
});

describe('a pad to tap', () => {
  function open(trial: 'curve' | 'coast') {
    const all = setUp('timeS', { unit: 's' });
    const typed = signal(false);
    const Shown = () => (
      <TapPad
        entry={all.entryNow()}
        trial={trial}
        onType={() => {
          typed.value = true;
        }}
      />
    );
    render(<Shown />);
    return { ...all, typed };
  }
  const tapAt = (timeStamp: number) => {
    const event = new Event('pointerdown', { bubbles: true });
    Object.defineProperties(event, { timeStamp: { value: timeStamp }, button: { value: 0 } });
    fireEvent(screen.getByRole('button', { name: /^Tap/ }), event);
  };

  it('says what to tap at, first and second', async () => {
    open('coast');
    expect(screen.getByRole('button', { name: /as it passes the line/ })).toBeTruthy();
    tapAt(1000);
    await expect.poll(() => screen.queryByRole('button', { name: /comes to rest/ })).toBeTruthy();
  });

  it('takes the time between two taps and lets it be kept', async () => {
    const { kept, submitted } = open('curve');
    tapAt(1000);
    await expect
      .poll(() => screen.queryByRole('button', { name: /touches the cushion/ }))
      .toBeTruthy();
    tapAt(2620);
    expect(kept.value).toEqual({ figure: '1.62', unit: 's', word: 'tapped' });
    await expect.poll(() => screen.queryByRole('button', { name: 'Keep it' })).toBeTruthy();
    press('Keep it');
    expect(submitted.value).toBe(1);
  });

  it('throws a time away to be taken again', async () => {
    const { kept } = open('curve');
    tapAt(1000);
    await expect
      .poll(() => screen.queryByRole('button', { name: /touches the cushion/ }))
      .toBeTruthy();
    tapAt(1500);
    await expect.poll(() => screen.queryByRole('button', { name: 'Again' })).toBeTruthy();
    press('Again');
    expect(kept.value.figure).toBe('');
    await expect
      .poll(() => screen.queryByRole('button', { name: /as the tip strikes/ }))
      .toBeTruthy();
  });

  it('can be left for typing', () => {
    const { typed } = open('curve');
    press('Type the time instead');
    expect(typed.value).toBe(true);
  });
});
