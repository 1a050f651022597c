import { describe, expect, it } from 'vitest';
import { shotsToDo } from '../../../../src/engine/fit/trials/trials';
import { TRIAL_STEPS } from '../../../../src/state/measure/trial-steps';
import type { ShelfName } from '../../../../src/store/records';
import { ageLines } from '../../../../src/ui/measure/age-lines';
import {
  adviceWords,
  sureFigure,
  surenessInWords,
} from '../../../../src/ui/measure/knowledge-words';
import { readingFigure, readingInWords } from '../../../../src/ui/measure/reading-words';
import { drawingWords, stepWords } from '../../../../src/ui/measure/step-words';
import { shotName } from '../../../../src/ui/measure/trial-words';
import { FINISHED_LINE } from './invented-trials';

const BED = { lengthM: 2.54, ballRadiusM: 0.028575 };
const SHOTS = shotsToDo(BED);
const CONTEXT = { ballRadiusM: 0.028575, lengthUnit: 'mm', buttHeight: '40 cm' } as const;
const DAY_MS = 86_400_000;

describe('the words of a step', () => {
  const screens = SHOTS.flatMap((shot) =>
    TRIAL_STEPS[shot.trial].map((step) => ({ shot, step, words: stepWords(shot, step, CONTEXT) })),
  );

  it('leave nothing unsaid: a title and a sentence on every screen of every shot', () => {
    expect(screens.length).toBeGreaterThan(50);
    const faulty = screens.filter(
      ({ words }) => words.title === '' || !/^[A-Z].*\.$/.test(words.text),
    );
    expect(faulty.map(({ words }) => words)).toEqual([]);
  });

  it('name a button for every step that asks for no figure, and for no other', () => {
    const faulty = screens.filter(
      ({ step, words }) => (words.done !== '') !== (step.kind === 'done'),
    );
    expect(faulty.map(({ shot, step }) => `${shot.trial} ${step.name}`)).toEqual([]);
  });

  it('are short enough to stand above a keypad', () => {
    const long = screens.filter(({ words }) => words.text.length > 300);
    expect(long.map(({ words }) => words.text)).toEqual([]);
  });

  it('tell the diamond that the ball is really placed at', () => {
    const line = SHOTS.find(({ trial }) => trial === 'line');
    if (!line) throw new Error('there is no line trial');
    const [place] = TRIAL_STEPS.line;
    if (!place) throw new Error('there is no first step');
    const sixEighths = { ...line, setup: { ...line.setup, distanceM: 2.54 * (6 / 8) - 0.028575 } };
    expect(stepWords(sixEighths, place, CONTEXT).text).toContain('second diamonds');
    const fiveEighths = { ...line, setup: { ...line.setup, distanceM: 2.54 * (5 / 8) - 0.028575 } };
    expect(stepWords(fiveEighths, place, CONTEXT).text).toContain('third diamonds');
  });

  it('tell how high to raise the butt', () => {
    const curve = screens.find(({ step }) => step.name === 'butt');
    expect(curve?.words.text).toContain('40 cm above the cloth’s level');
  });

  it('have a picture told beside them', () => {
    const told = SHOTS.map((shot) => drawingWords(shot, 'set-up', null));
    expect(told.filter((words) => words.length < 80)).toEqual([]);
    const [line = FINISHED_LINE.shot] = SHOTS;
    expect(drawingWords(line, 'set-up', '58 mm left')).toContain(
      'touch the far rail at 58 mm left',
    );
  });
});

describe('the name of a shot', () => {
  it('is another for every shot that can be done', () => {
    const names = SHOTS.map((shot) => shotName(shot, 'mm'));
    expect(new Set(names).size).toBe(SHOTS.length);
  });

  it('tells which side and how hard', () => {
    expect(shotName(FINISHED_LINE.shot, 'mm')).toBe('Line, right side, firm');
  });
});

describe('a reading in words', () => {
  it.each([
    ['landingM', -0.092, 'mm', '92 mm left'],
    ['landingM', 0.092, 'cm', '9.2 cm right'],
    ['landingM', 0.0001, 'mm', '0 mm'],
    ['cueBallM', -0.254, 'in', '10 in back'],
    ['objectBallM', 1.2, 'mm', '1.20 m'],
    ['timeS', 1.6, 'mm', '1.60 s'],
  ] as const)('%s of %d in %s is "%s"', (name, value, lengthUnit, words) => {
    expect(readingInWords(readingFigure(name, value, { lengthUnit }))).toBe(words);
  });
});

describe('what is known, in words', () => {
  const row = {
    quantity: 'massRatio',
    shelf: 'cues',
    before: { value: 2.51, sd: 0.74 },
    now: { value: 1.63, sd: 0.22 },
  } as const;

  it('tells what was assumed beside what was measured', () => {
    expect(surenessInWords({ ...row, isMeasured: true }, 'mm')).toBe(
      '2.5 ± 0.7° was assumed, 1.6 ± 0.2° measured.',
    );
  });

  it('claims no measurement where there is none', () => {
    expect(surenessInWords({ ...row, isMeasured: false }, 'mm')).toBe('2.5 ± 0.7° is assumed.');
  });

  it.each([
    ['mm', '0.4 ± 0.2 mm per m'],
    ['cm', '0.4 ± 0.2 mm per m'],
    ['in', '0.04 ± 0.02 in per 100 in'],
  ] as const)('tells a tilt by the unit set, %s', (unit, words) => {
    expect(sureFigure('bedSlopeAlong', { value: 0.0004, sd: 0.0002 }, unit)).toBe(words);
  });

  it('tells what cannot be told apart, and what would help', () => {
    const words = adviceWords({
      kind: 'hangs-on-stroke',
      quantity: { owner: 'x', part: 'cloth', quantity: 'slideFriction' },
      stray: 'elevation',
      sdShare: 0.5,
    });
    expect(words).toContain('The cloth’s slide friction hangs on how high the butt is');
    expect(words).toContain('measure the butt’s height');
  });
});

describe('the age of what was measured', () => {
  const taken = [{ attempt: FINISHED_LINE, steps: TRIAL_STEPS.line, now: null }];
  const agedDays = (days: number, measured: readonly ShelfName[] = ['cues', 'cloths', 'balls']) =>
    ageLines(taken, measured, FINISHED_LINE.startedAtMs + days * DAY_MS);

  it('is told for what the trials touch', () => {
    expect(agedDays(12).map(({ text }) => text)).toEqual([
      'Cue last measured 12 days ago.',
      'Cloth last measured 12 days ago.',
    ]);
  });

  it('is not told of what the readings told nothing of, though they touched it', () => {
    expect(agedDays(12, ['cues']).map(({ text }) => text)).toEqual([
      'Cue last measured 12 days ago.',
    ]);
  });

  it('warns of a cloth after two months and of a cue after a year', () => {
    expect(agedDays(60).filter(({ isStale }) => isStale)).toEqual([]);
    expect(agedDays(61).filter(({ isStale }) => isStale)).toEqual([
      { text: 'Cloth last measured 2 months ago: a cloth changes.', isStale: true },
    ]);
    expect(agedDays(366).filter(({ isStale }) => isStale)).toHaveLength(2);
  });

  it('leaves out what is struck out or not finished', () => {
    const [place] = TRIAL_STEPS.line;
    if (!place) throw new Error('there is no first step');
    const left = [
      { attempt: { ...FINISHED_LINE, isStruckOut: true }, steps: TRIAL_STEPS.line, now: null },
      { attempt: FINISHED_LINE, steps: TRIAL_STEPS.line, now: place },
    ];
    expect(ageLines(left, ['cues', 'cloths'], FINISHED_LINE.startedAtMs)).toEqual([]);
  });
});
