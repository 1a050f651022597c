import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { TRIAL_NAMES } from '../../src/engine/fit/trials/trials';
import { DEFAULT_KIT } from '../../src/engine/kit/kit';
import { PARTS } from '../../src/engine/kit/kit-numbers';
import { answerLine } from '../../src/headless/answer-line';
import { FIGURE_NAMES } from '../../src/headless/fit-figures';
import {
  COMMANDS,
  commandsIn,
  DOORS,
  fieldsOf,
  firstOf,
  namesUnder,
  printedBy,
} from './doors-reference';

const README = readFileSync('README.md', 'utf8');

describe('the README', () => {
  it('opens with one command that serves the app and one that passes every test', () => {
    expect(commandsIn(README).slice(0, 2)).toEqual(['npm ci && npm start', 'npm ci && npm test']);
  });

  it('shows one lookup, which is the first of the doors', () => {
    expect(commandsIn(README).slice(2)).toEqual([COMMANDS[0]]);
  });

  it('shows two pictures of the app, which the manifest has too', () => {
    const shown = [...README.matchAll(/<img src="public\/([^"]+)"/g)].map(([, path]) => path);
    const config = readFileSync('vite.config.ts', 'utf8');
    expect(shown).toHaveLength(2);
    expect(shown.filter((path) => !config.includes(`'${path}'`))).toEqual([]);
    expect(shown.filter((path) => !existsSync(`public/${path}`))).toEqual([]);
  });
});

describe('the reference of the doors', () => {
  it('shows lookups that answer when run as they stand', () => {
    const printed = COMMANDS.filter((command) => command.includes('lookup')).map(printedBy);
    expect(printed).toMatchObject([
      { id: 1, ok: true },
      { id: 2, ok: true },
    ]);
    const more = Object.keys(printed[1]).filter((key) => !(key in printed[0]));
    expect(namesUnder('also in an answer').sort()).toEqual(more.sort());
  });

  it('names every field of an answer, and no other', () => {
    const example = COMMANDS.find((command) => command.includes('lookup')) ?? '';
    const request = /'(.*)'/.exec(example)?.[1] ?? '';
    const answer = JSON.parse(answerLine(request, 1));
    expect(namesUnder('field of an answer').sort()).toEqual(fieldsOf(answer).sort());
    expect([...new Set(namesUnder('field of a kit'))].sort()).toEqual(
      Object.keys(DEFAULT_KIT).sort(),
    );
    const asked = Object.keys(JSON.parse(request));
    expect(namesUnder('field of a request')).toEqual(expect.arrayContaining(asked));
  });

  it('shows a fit that answers when run as it stands, and names every field of its answer', () => {
    const { printed, asked } = firstOf('fit');
    expect(printed).toMatchObject({ id: 3, ok: true });
    expect(printed.unknown).toBeUndefined();
    expect(namesUnder('field of a report').sort()).toEqual(fieldsOf(printed).sort());
    expect(namesUnder('field of a job')).toEqual(expect.arrayContaining(Object.keys(asked)));
    const fields = ['id', 'trial', 'speed', ...FIGURE_NAMES, 'read', 'kit'];
    expect(namesUnder('field of a reading').sort()).toEqual(fields.sort());
    const readme = DOORS.slice(DOORS.indexOf('| field of a reading |'));
    for (const name of [...TRIAL_NAMES, ...PARTS]) expect(readme).toContain(`\`${name}\``);
  });
});
