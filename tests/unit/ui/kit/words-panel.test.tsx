import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it, vi } from 'vitest';
import { WordsPanel } from '../../../../src/ui/kit/WordsPanel';

afterEach(cleanup);

it('explains every word that the drawing from behind the cue writes beside a line or a band', () => {
  const router = { visit: vi.fn(), close: vi.fn() };
  // Only its two ways out of the panel are taken.
  const { container } = render(<WordsPanel app={{ router } as never} />);
  const terms = [...container.querySelectorAll('dt')].map((term) => term.textContent ?? '').join();
  for (const word of ['Aim line', 'cue lies here', 'Goes', 'How sure', 'Ghost ball']) {
    expect(terms).toContain(word);
  }
});
