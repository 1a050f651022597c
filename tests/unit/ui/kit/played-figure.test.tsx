import { fireEvent, screen } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { handShareWords, measuredFrom } from '../../../../src/ui/kit/played-words';
import { onEmptyPage } from '../measure/empty-page';
import { FINISHED_LINE } from '../measure/invented-trials';
import { openMeasure } from '../measure/open-measure';

onEmptyPage();

const PATIENCE = { timeout: 60_000 };

describe('the numbers of a record', () => {
  it('begin with what readings say, and own that a number typed below is overruled', async () => {
    const { container, app } = openMeasure('#kit/cues/demo-cue-house', [FINISHED_LINE]);
    await screen.findByText(/measured from 1 shot$/, {}, PATIENCE);
    expect(container.querySelector('.played-figure')?.textContent).toMatch(
      /^\d+ mm squirt, measured from 1 shotBelow: numbers before readings \(an invented/,
    );
    const squirt = screen.getByRole<HTMLInputElement>('textbox', { name: /^Squirt over/ });
    fireEvent.input(squirt, { target: { value: '46' } });
    await screen.findByText(/before readings \(yours, by hand\).*readings leave/, {}, PATIENCE);
    const hint = squirt.closest('li')?.textContent;
    const figure = container.querySelector('.played-figure strong')?.textContent;
    expect(figure).not.toBe('46 mm');
    expect(hint).toContain(`Readings overrule it: ${figure}.`);
    expect(app.kit.current.cues.value.origin).not.toBe('invented');
  }, 120_000);

  it('are all there is where nothing was read', async () => {
    const { container } = openMeasure('#kit/cues/demo-cue-house');
    await screen.findByText('An invented example. Change a number and it counts as yours.');
    expect(container.textContent).not.toContain('overrule');
  });
});

describe('the words on a number that readings overrule', () => {
  it('count the shots', () => {
    expect([1, 3].map(measuredFrom)).toEqual(['measured from 1 shot', 'measured from 3 shots']);
  });

  it('tell how much of a change by hand is left: its share of the variance', () => {
    const spread = (massRatio: number) => ({ spread: { massRatio } as never });
    expect(handShareWords('cues', spread(0.3), spread(0.15))).toContain('about 25 %');
  });
});
