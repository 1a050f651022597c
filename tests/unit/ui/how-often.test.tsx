import { signal } from '@preact/signals';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import type { RoomModel } from '../../../src/state/room-model';
import type { AppModels } from '../../../src/ui/app-models';
import { HowOften } from '../../../src/ui/shot/HowOften';
import { STUDENT } from '../../store/invented-players';

afterEach(cleanup);

const app = {
  player: { isKnown: signal(true), inPlay: signal({ ...STUDENT, name: 'You' }) },
} as unknown as AppModels;

type Assessed = NonNullable<RoomModel['room']['value']>;

/** Invented: 64 in a hundred, off by two for the drawing, and by more for who plays. */
const assessed = (low: number, high: number) =>
  ({
    chance: { share: 0.64, error: 0.02 },
    chanceOnKnownKit: { share: 0.71, error: 0.02 },
    range: { low, high },
  }) as unknown as Assessed;

it('tells a chance by one figure with one width, and nothing of how it was drawn', () => {
  const { container } = render(<HowOften app={app} assessed={assessed(0.41, 0.83)} />);
  const rows = [...container.querySelectorAll('dd')].map(({ textContent }) => textContent);
  expect(rows).toEqual(['about 6 in 10 (4 to 8, 9 chances in 10)', 'about 7 in 10']);
  expect(container.textContent).toMatch(/From 4 to 8 is for what is not known of the player yet/);
  expect(container.textContent).not.toMatch(/±|%/);
});

it('tells no width where the ends come to the same', () => {
  const { container } = render(<HowOften app={app} assessed={assessed(0.61, 0.64)} />);
  expect(container.querySelector('dd')?.textContent).toBe('about 6 in 10');
  expect(container.textContent).not.toMatch(/not known of the player/);
});
