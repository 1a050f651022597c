import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { READING_NAMES, READING_RANGES } from '../../src/engine/fit/trials/trial';
import { TRIAL_NAMES, TRIALS } from '../../src/engine/fit/trials/trials';

const DEVELOPERS = readFileSync('DEVELOPERS.md', 'utf8');

/** The rows of the table of trials, cell by cell. */
const ROWS = (DEVELOPERS.slice(DEVELOPERS.indexOf('| trial |')).split('\n\n')[0] ?? '')
  .split('\n')
  .slice(2)
  .map((row) => row.split('|').map((cell) => cell.trim()));

const nameIn = (cell = '') => /^`(\w+)`/.exec(cell)?.[1] ?? '';

describe('the table of trials', () => {
  it('names every trial and reading, in the order in which they are taken', () => {
    const told = ROWS.map(([, trial, , reading]) => [nameIn(trial), nameIn(reading)]);
    const taken = TRIAL_NAMES.flatMap((trial) =>
      TRIALS[trial].readings.map(({ name }) => [trial, name]),
    );
    expect(told).toEqual(taken);
  });

  it('gives each reading’s unit and error as the fit takes them', () => {
    const specs = TRIAL_NAMES.flatMap((trial) => TRIALS[trial].readings);
    ROWS.forEach(([, , , , unit = '', , error], at) => {
      const { name = '', sd = 0, isShare = false } = specs[at] ?? {};
      expect(error).toBe(isShare ? `${Math.round(sd * 100)} %` : `${sd} ${unit}`);
      expect(name.toLowerCase().endsWith(unit)).toBe(true);
    });
  });

  it('tells which way is plus of every reading that may be negative', () => {
    const signed = ROWS.filter(([, , , , , sign]) => sign !== '').map((row) => nameIn(row[3]));
    const negative = READING_NAMES.filter((name) => READING_RANGES[name].min < 0);
    expect([...new Set(signed)].sort()).toEqual([...negative].sort());
  });
});
