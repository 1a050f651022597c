import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../src/engine/kit/kit';
import type { Answered } from '../../../src/state/shot-answers';
import { DEFAULT_PREFERENCES, DEFAULT_SHOT } from '../../../src/store/default-desk';
import { faceWords, shooterWords, stripWords } from '../../../src/ui/shot/picture-words';
import { tipScale } from '../../../src/units/tip-unit';
import { answerTo } from '../state/open-shot';

const PREFERENCES = { ...DEFAULT_PREFERENCES, lengthUnit: 'mm' } as const;

function answered(change: Partial<Answered['shot']> = {}): Answered {
  const shot = { ...DEFAULT_SHOT, distanceM: 1, cutRad: Math.PI / 6, side: -0.3, ...change };
  return { shot, kit: DEFAULT_KIT, answer: answerTo(shot) };
}

describe('the shooter’s view in words', () => {
  it('says how the ghost ball covers the object ball, and where aim and stick pass', () => {
    // A sine of a half: the ghost ball's centre lies one radius beside, away from the cut.
    const words = shooterWords(answered(), PREFERENCES);
    expect(words).toContain('the ghost ball 29 mm left of its centre');
    expect(words).toContain('From the centre: 50 mm left');
    expect(words).toContain('From the ghost: 30 mm left');
    expect(words).toContain('Stick, from the centre: 61 mm left');
  });

  it('follows the shot to the other side', () => {
    const words = shooterWords(answered({ cutRad: -Math.PI / 6, side: 0.9 }), PREFERENCES);
    expect(words).toContain('the ghost ball 29 mm right of its centre');
    expect(words).toContain('From the ghost: 90 mm right');
  });

  it('is told from the ghost ball where that leads', () => {
    const words = shooterWords(answered(), { ...PREFERENCES, lead: 'ghost-ball' });
    expect(words).toContain('Stick, from the ghost ball: 41 mm left');
  });

  it('says that there is no aim where there is none', () => {
    expect(shooterWords(null, PREFERENCES)).toContain('no aim');
  });
});

describe('the strip from above in words', () => {
  const bowed = [0, -0.012, -0.004].map((xM, at) => ({ xM, yM: at / 2 }));

  it('says how far it is, how the path bows, where the aim passes and where the ball goes', () => {
    expect(stripWords(answered(), bowed, PREFERENCES, 2.54)).toBe(
      'The cue ball goes 1.00 m to the ghost ball; its path bows 12 mm left of the straight line; the aim line passes 30 mm left of the ghost ball; the object ball goes 30.0° right.',
    );
  });

  it('says straight of what is straight', () => {
    const words = stripWords(answered({ cutRad: 0, side: 0 }), [], PREFERENCES, 2.54);
    expect(words).toContain('its path straight');
    expect(words).toContain('0 mm off the ghost ball');
    expect(words).toContain('straight on');
  });
});

describe('the cue ball’s face in words', () => {
  const on = DEFAULT_KIT;
  it.each([
    [-0.36, 0.1, '0.36 R left, 0.1 R high; the miscue limit is ½ R out'],
    [0.25, -0.5, '¼ R right, ½ R low; the miscue limit is ½ R out'],
    [0, 0, 'at the centre; the miscue limit is ½ R out'],
  ])('side %f and height %f in radii', (side, height, words) => {
    const scale = tipScale('radii', on);
    expect(faceWords({ side, height }, 0.5, 'radii', scale)).toBe(words);
  });

  it('says the same in tips, and by the clock', () => {
    const [tips, clock] = [tipScale('tips', on), tipScale('clock', on)];
    const at = { side: -0.34, height: 0 };
    expect(faceWords(at, 0.5, 'tips', tips)).toBe('1 tip left; the miscue limit is 1½ tips out');
    expect(faceWords(at, 0.5, 'clock', clock)).toMatch(/^9 o’clock, 1 tip out;/);
  });
});
