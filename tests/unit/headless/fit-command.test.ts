import { execFileSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { answerFit } from '../../../src/headless/fit-answer';

const START_TIMEOUT_MS = 300_000;

it(
  'answers line by line in order, broken ones too',
  () => {
    const read = { landingM: -0.05 };
    const job = { id: 1, readings: [{ trial: 'line', side: 0.4, distanceM: 1.9, read }] };
    const lines = [JSON.stringify(job), '', 'broken', JSON.stringify({ ...job, id: 2 })];
    const output = execFileSync('npm', ['run', '-s', 'fit'], {
      input: `${lines.join('\r\n')}\n`,
      encoding: 'utf8',
    });
    expect(output.split('\n').slice(0, -1)).toEqual(
      lines.map((line, index) => answerFit(line, index + 1)),
    );
    const answers = lines.map((line, index) => JSON.parse(answerFit(line, index + 1)));
    expect(answers.map(({ ok, line }) => line ?? ok)).toEqual([true, 2, 3, true]);
  },
  START_TIMEOUT_MS,
);
