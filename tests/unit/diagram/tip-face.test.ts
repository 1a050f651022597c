import { describe, expect, it } from 'vitest';
import { contactAt, snapContacts } from '../../../src/diagram/tip-face';

const MARKS = { limit: 0.5, step: 0.25 };
/** With a margin of 0.1 a face 200 px wide has a radius of 80 px. */
const at = (x: number, y: number) => contactAt({ x, y }, 200, 0.1, MARKS);

describe('the cue ball’s face', () => {
  it('has the centre in its middle, right to the right and up upwards', () => {
    expect(at(100, 100)).toEqual({ side: 0, height: 0 });
    expect(at(128.8, 100).side).toBeCloseTo(0.36, 9);
    expect(at(100, 71.2).height).toBeCloseTo(0.36, 9);
  });

  it('takes a touch near a marked contact for that contact', () => {
    expect(at(100 + 20 + 3, 100 - 2)).toEqual({ side: 0.25, height: 0 });
  });

  it('leaves a touch between marked contacts where it is', () => {
    expect(at(100 + 10, 100)).toEqual({ side: 0.12, height: 0 });
  });

  it('marks only contacts within the limit, the limit itself among them', () => {
    const contacts = snapContacts(MARKS);
    expect(contacts).toHaveLength(13);
    expect(contacts).toContainEqual({ side: 0.5, height: 0 });
    expect(contacts).not.toContainEqual({ side: 0.5, height: 0.25 });
  });

  it('marks the centre, half a tip and a tip to each side, where tips are the unit', () => {
    const step = 0.5 / 2.93;
    const across = snapContacts({ limit: 0.5, step }).filter(({ height }) => height === 0);
    const tips = across.map(({ side }) => (side * 2.93).toFixed(2));
    expect(tips.map(Number)).toEqual([-1, -0.5, 0, 0.5, 1]);
  });
});
