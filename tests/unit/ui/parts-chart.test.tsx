import { cleanup, render } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_SHOT } from '../../../src/store/default-desk';
import { PartsChart } from '../../../src/ui/shot/PartsChart';
import { answerTo } from '../state/open-shot';

afterEach(cleanup);

it('draws a bar for what the aim allows for, and none for what reads as nothing', () => {
  const parts = { squirtRad: -0.02, swerveRad: 0.01, throwRad: 0.0005 };
  const answer = { ...answerTo(DEFAULT_SHOT), parts, aimRad: -0.0095 };
  const { container } = render(<PartsChart answer={answer} />);
  const rows = [...container.querySelectorAll('.parts-chart > div')].map((row) => [
    row.querySelector('dt')?.textContent,
    row.querySelectorAll('rect').length,
  ]);
  expect(rows).toEqual([
    ['squirt', 1],
    ['swerve', 1],
    ['throw', 0],
    ['aim', 1],
  ]);
});
