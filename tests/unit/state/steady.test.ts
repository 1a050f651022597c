import { computed, effect, signal } from '@preact/signals';
import { expect, it } from 'vitest';
import { steady } from '../../../src/state/steady';

it('passes on what differs, and keeps still at what says the same', () => {
  const figure = signal(1);
  const seen: object[] = [];
  const told = steady(computed(() => ({ figure: Math.abs(figure.value) })));
  const stop = effect(() => {
    seen.push(told.value);
  });
  figure.value = -1;
  expect(seen).toEqual([{ figure: 1 }]);
  figure.value = 2;
  expect(seen).toEqual([{ figure: 1 }, { figure: 2 }]);
  stop();
});
