import { describe, expect, it } from 'vitest';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { RoomWindow, RoomWindows } from '../../../../src/engine/room/windows';
import { DEFAULT_PREFERENCES } from '../../../../src/store/default-desk';
import { fanLine, leftWords } from '../../../../src/ui/choose/fan-words';
import { tenthsWords } from '../../../../src/ui/choose/pocket-words';
import {
  leadLabel,
  leadShare,
  outcomeWords,
  reasonWords,
  strokeWords,
  wayLine,
  wayName,
} from '../../../../src/ui/choose/way-words';
import { tileWords } from '../../../../src/ui/shot/tile-words';
import { speedScale } from '../../../../src/units/speed-unit';
import { tipScale } from '../../../../src/units/tip-unit';
import { openShot } from '../../state/open-shot';
import { SHAPE } from './invented-choose';

/** Tip contacts told in radii. */
const RADII = {
  unit: 'radii',
  scale: tipScale('radii', { ballRadiusM: 1, tipRadiusM: 1 }),
} as const;
const BED = { tableLengthM: 2.54, kit: DEFAULT_KIT };

const window = (low: RoomWindow['low']['endedBy'], high: RoomWindow['high']['endedBy']) => ({
  low: { value: 0, endedBy: low },
  high: { value: 1, endedBy: high },
  directionPerUnit: 1,
});
const WINDOWS: RoomWindows = {
  aimRad: window('thin', 'full'),
  speedMps: window('full', 'thin'),
  side: window('thin', 'miscue'),
  height: window('range', 'full'),
  elevationRad: window('range', 'range'),
};

/** An invented way, played soft with outside. */
const WAY: RankedWay = {
  option: {
    place: 0,
    stroke: {
      aimRad: 0,
      side: -0.25,
      height: 0.125,
      elevationRad: (3 * Math.PI) / 180,
      speedMps: 0.9,
    },
    chance: {
      share: 0.41,
      sds: { direction: 1, side: 0, height: 0, elevation: 0, speed: 2, kit: 0 },
    },
  },
  way: { side: 'outside', arrival: 'roll', isDrag: false, speed: 'soft', isRaised: false },
  chance: 0.41,
  chanceError: 0.02,
  hardest: 'speed',
  windows: WINDOWS,
  rest: { xM: 0, yM: 0, sdM: 0.1, places: [] },
  goodPosition: null,
  clean: 1,
  scratch: 0.08,
};

/** The same, hard for what is named alone. */
function hardBy(hardest: RankedWay['hardest']): RankedWay {
  const { chance } = WAY.option;
  const sds = { ...chance.sds, speed: 0, [hardest]: 2 };
  return { ...WAY, hardest, option: { ...WAY.option, chance: { ...chance, sds } } };
}

const struck = (side: number): RankedWay['option'] => ({
  ...WAY.option,
  stroke: { ...WAY.option.stroke, side },
});

describe('words for a way', () => {
  it('name it as players do', () => {
    expect(wayName(WAY)).toBe('outside, soft, roll');
    const way = { ...WAY.way, side: 'none', isDrag: true, isRaised: true } as const;
    expect(wayName({ way, option: struck(0) })).toBe('no side, soft, drag, roll, cue raised');
  });

  it('call a cue raised that has to be, over what lies behind the cue ball', () => {
    const held = (deg: number) => {
      const stroke = { ...WAY.option.stroke, elevationRad: (deg * Math.PI) / 180 };
      return wayName({ way: WAY.way, option: { ...WAY.option, stroke } });
    };
    // From ten degrees on Shot warns of it (common practice, no source).
    expect(held(9)).toBe('outside, soft, roll');
    expect(held(12)).toBe('outside, soft, roll, cue raised');
  });

  it.each([0.3, 0.75, 1.5, 2.5, 3.4, 4.8])('call %d m/s what Shot calls it', (speedMps) => {
    const option = { ...WAY.option, stroke: { ...WAY.option.stroke, speedMps } };
    const { word } = tileWords('speed', openShot({ speedMps }).model, DEFAULT_PREFERENCES);
    expect(wayName({ way: WAY.way, option })).toBe(`outside, ${word}, roll`);
  });

  it('call a little side so, and not none', () => {
    const way = { ...WAY.way, side: 'none' } as const;
    expect(wayName({ way, option: struck(-0.056) })).toBe('a touch of side, soft, roll');
    expect(strokeWords({ option: struck(-0.056) }, speedScale('mps', BED), RADII)).toContain(
      '0.06 R left',
    );
  });

  it.each([
    ['speed', 'the speed leaves little room: full if slow, thin if fast'],
    ['direction', 'the aim leaves little room: thin if aimed left, full if aimed right'],
    ['height', 'the tip’s height leaves little room: full if higher'],
    ['elevation', 'the butt’s height leaves little room'],
    ['kit', 'most of the doubt is your kit: measuring it helps'],
  ] as const)('say why it is hard where that is the %s', (hardest, words) => {
    expect(reasonWords({ ...hardBy(hardest) })).toBe(words);
  });

  it('say nothing where nothing is hard, or no one thing strays enough to make it so', () => {
    expect(reasonWords({ ...WAY, chance: 0.95 })).toBe('');
    expect(reasonWords({ ...WAY, chance: 0.8 })).toBe('');
    expect(reasonWords({ ...WAY, chance: 0.75 })).toMatch(/^the speed leaves little room/);
    expect(reasonWords({ ...WAY, hardest: 'side' })).toBe('');
    expect(wayLine({ ...WAY, chance: 0.95, scratch: 0 }, 'figures')).toBe('');
  });

  it('count more side away from the middle, left side too', () => {
    // Side is left: the low end is more of it.
    expect(reasonWords(hardBy('side'))).toBe(
      'the side leaves little room: thin with more, miscue with less',
    );
  });

  it('say the reason alone where no window is known', () => {
    expect(reasonWords({ ...WAY, windows: null })).toBe('the speed leaves little room');
  });

  it('tell scratches, and the zone where there is one', () => {
    expect(outcomeWords(WAY, 'figures')).toEqual(['scratch 1 in 10']);
    expect(outcomeWords({ ...WAY, scratch: 0.04 }, 'figures')).toEqual(['scratch rarely']);
    expect(outcomeWords({ ...WAY, scratch: 0.02 }, 'figures')).toEqual([]);
    const zoned = { ...WAY, scratch: 0, goodPosition: 0.5 };
    expect(outcomeWords(zoned, 'figures')).toEqual(['the pot alone: 4 in 10']);
    expect(
      `${leadLabel(zoned, 'figures')} ${tenthsWords(leadShare({ ...zoned, chance: 0.4 }), 'figures')}`,
    ).toBe('goes and in the zone 2 in 10');
    expect(`${leadLabel(WAY, 'figures')} ${tenthsWords(leadShare(WAY), 'figures')}`).toBe(
      'goes 4 in 10',
    );
  });

  it('leave scratches out of the figure where they count, and say what goes at all', () => {
    const risky = { ...WAY, chance: 0.5, clean: 0.6, scratch: 0.2 };
    expect(`${leadLabel(risky, 'figures')} ${tenthsWords(leadShare(risky), 'figures')}`).toBe(
      'goes, no scratch 3 in 10',
    );
    expect(outcomeWords(risky, 'figures')).toEqual([
      'the pot alone: 5 in 10, of these 4 in 10 scratch and cost the turn',
    ]);
    expect(outcomeWords({ ...risky, clean: 0.96 }, 'figures')).toEqual([
      'the pot alone: 5 in 10, of these a few scratch and cost the turn',
    ]);
    expect(outcomeWords({ ...risky, clean: 0.98, scratch: 0.1 }, 'figures')).toEqual([
      'the pot alone: 5 in 10',
      'scratch 1 in 10',
    ]);
  });

  it('tell how often in words where nobody is known', () => {
    expect(outcomeWords({ ...WAY, scratch: 0.02 }, 'ease')).toEqual([]);
    expect(outcomeWords({ ...WAY, scratch: 0.2 }, 'ease')).toEqual(['often a scratch']);
    expect(leadLabel(WAY, 'ease')).toBe('for most');
    expect(leadLabel({ ...WAY, goodPosition: 0.5, clean: 0.8 }, 'ease')).toBe(
      'for most and in the zone',
    );
  });

  it('tell the stroke in figures', () => {
    expect(strokeWords(WAY, speedScale('mps', BED), RADII)).toBe(
      '¼ R left, ⅛ R high, cue 3° up, 0.9 m/s',
    );
    // A ball of 28.6 mm and a dome of 10 mm: a quarter of the radius is three quarters of a tip.
    const on = { ballRadiusM: 0.0286, tipRadiusM: 0.01 };
    const tips = { unit: 'tips', scale: tipScale('tips', on) } as const;
    expect(strokeWords(WAY, speedScale('mps', BED), tips)).toBe(
      '¾ tip left, ⅜ tip high, cue 3° up, 0.9 m/s',
    );
  });
});

describe('words for a fan', () => {
  const ending = (hit: FanPlay['hit'], outcome: FanPlay['play']['balls'][number]['outcome']) =>
    ({
      hit,
      aimRad: 0,
      play: {
        ok: true,
        balls: [{ from: { xM: 0, yM: 0 }, phases: [], outcome }],
        events: [],
        endS: 1,
        complete: true,
      },
    }) satisfies FanPlay;

  it('say where the cue ball rests, and a scratch by name', () => {
    const rests = ending('true', { kind: 'rests', xM: 0, yM: 0 });
    expect(fanLine(rests, SHAPE)).toBe('true: 4.0 along, 2.0 from the left');
    const scratch = ending('thin', { kind: 'pocketed', pocket: 'far-left', timeS: 1 });
    expect(fanLine(scratch, SHAPE)).toBe('thin: scratch in the far left pocket');
  });

  it('say where a ball is left that does not fall', () => {
    const { play, ...fan } = ending('missed-thin', { kind: 'rests', xM: 0, yM: 0 });
    const [cueBall] = play.balls;
    if (!cueBall) throw new Error('there is a cue ball');
    const with3 = (outcome: typeof cueBall.outcome) => ({
      ...fan,
      play: { ...play, balls: [cueBall, { ...cueBall, outcome }] },
    });
    const line = (outcome: typeof cueBall.outcome) => leftWords(with3(outcome), 3, LAID, SHAPE);
    // Laid in whatever order: a play tells of the cue ball first.
    const LAID = [
      { name: 3, xM: 0, yM: 0 },
      { name: 'cue', xM: 0, yM: 0.5 },
    ] as const;
    // A quarter of the table up, and of the width to the right of the middle: by the diamonds of SHAPE.
    const left = { kind: 'rests', xM: SHAPE.widthM / 4, yM: -SHAPE.lengthM / 4 } as const;
    expect(line(left)).toBe('; the 3: 2.0 along, 3.0 from the left');
    expect(line({ kind: 'pocketed', pocket: 'far-left', timeS: 1 })).toBe('');
  });
});
