import { cleanup, render, screen } from '@testing-library/preact';
import { expect } from 'vitest';
import type { CardsModel } from '../../../../src/state/cards/cards-model';
import type { SavedPosition } from '../../../../src/store/saved-position';
import { ChoosePlace } from '../../../../src/ui/choose/ChoosePlace';
import { createRouter } from '../../../../src/ui/route';
import type { Answers } from '../../state/choose/invented-work';
import { CUT, inventedChoose } from './invented-choose';

/** Nobody takes a picture. */
const NO_CARDS = {} as CardsModel;

/** Choose at an address. */
export function openChoose(hash = '#choose', position: SavedPosition = CUT, answers: Answers = {}) {
  cleanup();
  history.replaceState(null, '', hash);
  const models = inventedChoose(position, answers);
  const router = createRouter(window);
  const { container } = render(<ChoosePlace app={{ ...models, router, cards: NO_CARDS }} />);
  return { ...models, router, container };
}

/** Choose with all ways compared. */
export async function openCompared(position: SavedPosition = CUT, answers: Answers = {}) {
  const opened = openChoose('#choose/ways', position, answers);
  opened.rest();
  await expect.poll(() => opened.choose.comparison.value.state).toBe('done');
  return opened;
}

export const press = (name: string | RegExp) => screen.getByRole('button', { name }).click();
