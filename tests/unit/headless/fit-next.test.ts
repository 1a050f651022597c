import { describe, expect, it } from 'vitest';
import { ask, JOB, LINES, type Told } from './fit-lines';

describe('the next shot', () => {
  const { next } = ask({ ...JOB, next: true });

  it('comes only where it is wanted', () => {
    expect(ask(JOB)).not.toHaveProperty('next');
    expect(ask({ ...JOB, next: false })).not.toHaveProperty('next');
    expect(next.worth).toBeGreaterThan(0);
  });

  it('is a reading but for what is read, and expects just that', () => {
    const readings = [...LINES, { ...next.shot, read: next.expected }];
    const answer = ask({ ...JOB, readings });
    expect(answer.ok).toBe(true);
    expect(answer.unknown).toBeUndefined();
    const names = answer.readings.slice(2).map(({ name }: { name: string }) => name);
    expect(names).toEqual(Object.keys(next.expected));
  });

  it('teaches a quantity that is told', () => {
    const known = ask(JOB).estimates.map(({ quantity }: Told) => quantity);
    expect(known).toContain(next.teaches);
  });

  it('is proposed before anything has been read, for the table that is told', () => {
    const first = ask({ readings: [], tableLengthM: 2.337, next: true }).next;
    expect(first.shot.tableLengthM).toBe(2.337);
    expect(first.worth).toBeGreaterThan(next.worth);
  });

  it('serves the aims that are told', () => {
    const aim = { distanceM: 1, cutDeg: 10, height: 0, elevationDeg: 3, speedMps: 2 };
    const sure = (side: number) => ask({ ...JOB, aims: [{ ...aim, side }] }).aimSdDeg.before;
    expect(sure(0.4)).toBeGreaterThan(2 * sure(0));
  });
});
