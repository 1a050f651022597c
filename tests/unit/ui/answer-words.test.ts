import { describe, expect, it } from 'vitest';
import { DEFAULT_PREFERENCES, DEFAULT_SHOT } from '../../../src/store/default-desk';
import {
  angleReading,
  answerInWords,
  answerReadings,
  faceReading,
  inWords,
  lengthReading,
} from '../../../src/ui/shot/answer-words';
import { answerTo } from '../state/open-shot';

const RADIUS_M = 0.028575;
const face = (balls: number) => inWords(faceReading(balls * 2 * RADIUS_M, RADIUS_M));

describe('where the aim line crosses the object ball', () => {
  it.each([
    [-0.25, '¼ ball left of centre'],
    [0.375, '⅜ ball right of centre'],
    [0.5, 'at the right edge of the object ball'],
    [0.54, 'just outside the right edge of the object ball'],
    [-0.46, 'just inside the left edge of the object ball'],
    [1, '½ ball outside right edge'],
    [-1.5, '1 ball outside left edge'],
    [-3, '2½ balls outside left edge'],
    [0.01, 'through the centre of the object ball'],
  ])('%f ball widths right reads "%s"', (balls, words) => {
    expect(face(balls)).toBe(words);
  });

  it.each([
    [0.29, 'just over ¼ ball right of centre'],
    [-0.21, 'just under ¼ ball left of centre'],
  ])('%f ball widths is told to be off the eighth', (balls, words) => {
    expect(face(balls)).toBe(words);
  });
});

describe('other readings', () => {
  it('tell a length with its side, and neither side of nothing', () => {
    expect(inWords(lengthReading(-0.0183, 'mm', 'of centre'))).toBe('18 mm left of centre');
    expect(inWords(lengthReading(0.0254, 'in', 'of centre'))).toBe('1.00 in right of centre');
    expect(lengthReading(0.0001, 'mm', '').side).toBe('none');
  });

  it('tell an angle to a tenth of a degree', () => {
    expect(inWords(angleReading(-0.0218))).toBe('1.2° left');
    expect(angleReading(0.0001)).toMatchObject({ figure: '0.0°', side: 'none' });
  });
});

describe('the answer', () => {
  const answer = { ...answerTo(DEFAULT_SHOT), aimOffsetM: 0.012, aimOnObjectBallM: -0.0142875 };

  it('leads with the object ball, the ghost ball after it', () => {
    const readings = answerReadings(answer, RADIUS_M, {
      ...DEFAULT_PREFERENCES,
      lead: 'object-ball',
    });
    expect(inWords(readings.lead)).toBe('¼ ball left of centre');
    expect(answerInWords(readings)).toBe(
      'Aim: ¼ ball left of centre. From the centre: 14 mm left. From the ghost: 12 mm right.',
    );
  });

  it('leads with the ghost ball for those who prefer it', () => {
    const readings = answerReadings(answer, RADIUS_M, {
      ...DEFAULT_PREFERENCES,
      lead: 'ghost-ball',
      lengthUnit: 'cm',
    });
    expect(answerInWords(readings)).toBe(
      'Aim: 1.2 cm right of the ghost ball. From the object ball: ¼ ball left of centre.',
    );
  });

  it('tells the stick from the same ball as the lead', () => {
    const stickOf = (lead: 'object-ball' | 'ghost-ball') =>
      answerReadings({ ...answer, stickOffsetM: 0.001, stickOnObjectBallM: 0.002 }, RADIUS_M, {
        ...DEFAULT_PREFERENCES,
        lead,
      }).stick.reading.figure;
    expect(stickOf('ghost-ball')).toBe('1');
    expect(stickOf('object-ball')).toBe('2');
  });
});
