import { render } from '@testing-library/preact';
import { describe, expect, it } from 'vitest';
import { DefaultsNote } from '../../../../src/ui/kit/DefaultsNote';
import { onEmptyPage } from '../measure/empty-page';
import { FINISHED_LINE } from '../measure/invented-trials';
import { openMeasure } from '../measure/open-measure';

onEmptyPage();

const noteOf = (...opened: Parameters<typeof openMeasure>) => {
  const { app, measure } = openMeasure(...opened);
  measure.report.subscribe(() => undefined);
  const { container } = render(<DefaultsNote app={app} />);
  return { app, told: () => container.textContent };
};

describe('the note on what is nobody’s own', () => {
  it('says so of all while nothing was measured or put in', async () => {
    const { told } = noteOf('#kit/words');
    await expect.poll(told).toMatch(/^Still defaults: cue, cloth, balls, table\. M/);
  });

  it('names what is left once some was measured or put in by hand', async () => {
    const { app, told } = noteOf('#kit/words', [FINISHED_LINE]);
    await expect
      .poll(told, { timeout: 60_000 })
      .toMatch(/^Still defaults: cloth, balls, table\. M/);
    app.kit.nudge('balls', 'demo-balls-clean', 'ballRadiusM', 1);
    await expect.poll(told, { timeout: 60_000 }).toMatch(/: cloth, table\. Measure them, or put/);
  }, 120_000);
});
