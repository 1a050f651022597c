import { describe, expect, it } from 'vitest';
import type { KitQuantity } from '../../../src/engine/kit/kit-spread';
import type { EndedBy } from '../../../src/engine/room/windows';
import {
  certaintyWords,
  chanceWords,
  endsInWords,
  windowWords,
} from '../../../src/ui/shot/room-words';
import { DEGREES } from '../../../src/units/angle-degrees';
import { LENGTH_UNITS } from '../../../src/units/length-unit';
import { SPEED_UNITS } from '../../../src/units/speed-unit';
import { TIP_CONTACT } from '../../../src/units/tip-contact';

describe('a chance', () => {
  it.each([
    [0, 'less than 1 in 20'],
    [0.049, 'less than 1 in 20'],
    [0.05, 'about 1 in 20'],
    [0.0749, 'about 1 in 20'],
    [0.075, 'about 1 in 10'],
    [0.1499, 'about 1 in 10'],
    [0.151, 'about 2 in 10'],
    [0.5, 'about 5 in 10'],
    [0.64, 'about 6 in 10'],
    [0.949, 'about 9 in 10'],
    [0.95, 'about 19 in 20'],
    [0.976, 'nearly always'],
    [1, 'nearly always'],
  ])('of %f is %s', (share, words) => {
    expect(chanceWords(share)).toBe(words);
  });

  it('is never told further off than half of what it is, or one in twenty', () => {
    for (let share = 0.05; share < 0.975; share += 0.001) {
      const told = /(\d+) in (\d+)/.exec(chanceWords(share));
      const said = Number(told?.[1]) / Number(told?.[2]);
      expect(Math.abs(said - share)).toBeLessThanOrEqual(Math.min(0.0502, share / 2));
    }
  });
});

const windowOf = (low: number, lowBy: EndedBy, high: number, highBy: EndedBy) => ({
  low: { value: low, endedBy: lowBy },
  high: { value: high, endedBy: highBy },
});

describe('a window', () => {
  const { mps } = SPEED_UNITS;
  it.each([
    [windowOf(1.426, 'thin', 2.139, 'full'), mps, 'from 1.4 (thin) to 2.1 m/s (full)'],
    [windowOf(1.791, 'full', 1.812, 'thin'), mps, 'from 1.791 (full) to 1.812 m/s (thin)'],
    [windowOf(1.038, 'short', 13, 'range'), mps, 'from 1.0 m/s (stops short) up'],
    [windowOf(0, 'range', 8.014, 'full'), DEGREES, 'up to 8° (full)'],
    [windowOf(0, 'range', 75, 'range'), DEGREES, 'whatever it is'],
    [
      windowOf(-0.019, 'left', 0.019, 'right'),
      TIP_CONTACT,
      'from −0.019 (wide left) to 0.019 R (wide right)',
    ],
    [
      windowOf(-0.5, 'miscue', 0.31, 'untouched'),
      TIP_CONTACT,
      'from −0.5 (miscue) to 0.3 R (misses the ball)',
    ],
  ])('says which miss ends it where: %o', (window, facts, words) => {
    expect(windowWords(window, facts)).toBe(words);
  });

  const MM = { ...LENGTH_UNITS.mm, sides: { plus: 'right', minus: 'left' } };
  const SIDE = { ...TIP_CONTACT, sides: { plus: 'right', minus: 'left' } };

  it('has words for its sides, and no minus sign', () => {
    const words = windowWords(windowOf(-0.216, 'full', 0.041, 'thin'), SIDE);
    expect(words).toBe('from 0.22 R left (full) to 0.04 R right (thin)');
  });

  it.each([
    [windowOf(-0.02, 'full', 0.03, 'thin'), MM, 'less than 0.1 mm either way (full, thin)'],
    [windowOf(-0.02, 'kiss', 0.03, 'kiss'), MM, 'less than 0.1 mm either way (a second kiss)'],
    [
      windowOf(11.998, 'full', 12.003, 'thin'),
      MM,
      'only at 12 mm right, less than 0.1 mm either way (full, thin)',
    ],
    [
      windowOf(1.40012, 'short', 1.40031, 'full'),
      mps,
      'only at 1.4 m/s, less than 0.001 m/s either way (stops short, full)',
    ],
    [windowOf(0, 'range', 0.002, 'full'), DEGREES, 'less than 0.01° either way (full)'],
  ])('that is narrower than a figure can tell is told in words: %o', (window, facts, words) => {
    expect(windowWords(window, facts)).toBe(words);
  });

  it.each([
    [windowOf(-0.451, 'full', -0.357, 'thin'), 'Too far left it misses full, too far right thin.'],
    [
      windowOf(-0.5, 'miscue', 0.4, 'thin'),
      'Too far left the tip slips, too far right it misses thin.',
    ],
    [windowOf(-0.5, 'range', 0.4, 'thin'), 'Too far right it misses thin.'],
    [windowOf(-0.5, 'range', 0.5, 'range'), ''],
  ])('of %o says what its ends do: %s', (window, words) => {
    expect(endsInWords(window, SIDE)).toBe(words);
  });
});

describe('how sure the aim is', () => {
  const certainty = (quantity: KitQuantity) => ({
    aimSdRad: 0.01,
    contributions: [{ quantity, aimSdRad: 0.01 }],
    unsolved: [],
  });
  const never = () => false;

  it('names what leaves the most open, and that nobody has measured it', () => {
    const words = certaintyWords(certainty('massRatio'), 0.0148, 'mm', never);
    expect(words).toBe('sure to ±15 mm: cue not measured');
    expect(certaintyWords(certainty('bedSlopeRight'), 0.0148, 'in', never)).toBe(
      'sure to ±0.58 in: bed not measured',
    );
  });

  it('does not call a measured thing unmeasured', () => {
    const words = certaintyWords(certainty('slideFriction'), 0.003, 'mm', () => true);
    expect(words).toBe('sure to ±3 mm: mostly the cloth');
  });

  it('says so where the kit does not matter', () => {
    const none = { aimSdRad: 0, contributions: [], unsolved: [] };
    expect(certaintyWords(none, 0, 'mm', never)).toBe('sure of the aim, whatever the kit');
    expect(certaintyWords(certainty('massRatio'), 0.0002, 'mm', never)).toBe(
      'sure of the aim, whatever the kit',
    );
  });
});
