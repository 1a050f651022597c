import { describe, expect, it } from 'vitest';
import type { PositionShot } from '../../../../src/engine/goal/position-shot';
import { DEFAULT_KIT } from '../../../../src/engine/kit/kit';
import type { Neighbour } from '../../../../src/engine/lie/neighbours';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { RoomWindow, RoomWindows } from '../../../../src/engine/room/windows';
import { NOTHING_CHOSEN } from '../../../../src/store/saved-position';
import { besideWords } from '../../../../src/ui/choose/beside-words';
import { boardWords } from '../../../../src/ui/choose/board-words';
import { fanLine } from '../../../../src/ui/choose/fan-words';
import { goalWords, hindranceLines, lieWords } from '../../../../src/ui/choose/shot-words';
import { percentWords, spotWords } from '../../../../src/ui/choose/table-words';
import {
  leadLabel,
  leadShare,
  outcomeWords,
  reasonWords,
  strokeWords,
  wayName,
} from '../../../../src/ui/choose/way-words';
import { tileWords } from '../../../../src/ui/shot/tile-words';
import { speedScale } from '../../../../src/units/speed-unit';
import { openShot } from '../../state/open-shot';
import { inventedChoose, SHAPE } from './invented-choose';

const NINE_FOOT = { lengthM: 2.54, widthM: 1.27 };
const BED = { tableLengthM: 2.54, kit: DEFAULT_KIT };

const SHOT: PositionShot = {
  ok: true,
  distanceM: 0.84,
  cutRad: (31 * Math.PI) / 180,
  headingRad: 0,
  ghost: { xM: 0, yM: 0 },
  target: { kind: 'mouth', distanceM: 1, mouthM: 0.1 },
  inTheWay: [],
  least: { elevationRad: 0.05, over: 'nothing' },
  bridge: 'on-the-bed',
};

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
  scratch: 0.08,
};

describe('words for a table', () => {
  it('tell a spot in diamonds from the break end and from the left', () => {
    // Eight diamonds along, four across; the origin is the middle.
    expect(spotWords({ xM: 0, yM: 0 }, NINE_FOOT)).toBe('4.0 diamonds up, 2.0 from the left');
    expect(spotWords({ xM: 0.3175, yM: -1.27 }, NINE_FOOT)).toBe(
      '0.0 diamonds up, 3.0 from the left',
    );
  });

  it.each([
    [0, '0 %'],
    [0.004, 'under 1 %'],
    [0.414, '41 %'],
    [1, '100 %'],
  ])('tell a share of %d as %s', (share, words) => {
    expect(percentWords(share)).toBe(words);
  });
});

describe('words for what lies beside a ball', () => {
  const near = (what: Neighbour['what'], gapM: number) => ({ what, gapM, isFrozen: gapM === 0 });

  it.each([
    [[], 'mm', ''],
    [[near(4, 0), near(9, 0.01)], 'mm', 'frozen to the 4'],
    [[near('cue', 0), near('cushion', 0)], 'mm', 'frozen to the cue ball and the cushion'],
    [[near(4, 0.0021), near('cushion', 0.02)], 'mm', '2 mm from the 4'],
    [[near(4, 0.0021)], 'cm', '0.2 cm from the 4'],
    [[near(4, 0.0254)], 'in', '1.00 in from the 4'],
    [[near('cushion', 0.0004)], 'mm', '0.4 mm from the cushion'],
    [[near('cushion', 0.0004)], 'in', '0.016 in from the cushion'],
    [[near(4, 0.3)], 'mm', ''],
  ] as const)('%j in %s: %s', (nearestFirst, unit, words) => {
    expect(besideWords(nearestFirst, unit)).toBe(words);
  });
});

describe('words for what is played', () => {
  it.each([
    [null, null, 'No ball and pocket chosen yet'],
    [3, null, 'The 3: into which pocket?'],
    [null, 'far-right', 'Into the far right pocket: which ball?'],
    [3, 'far-right', 'The 3 into the far right pocket'],
  ] as const)('ball %s, pocket %s: %s', (ball, pocket, words) => {
    expect(goalWords({ ...NOTHING_CHOSEN, ball, pocket })).toBe(words);
  });

  it('tell how it lies, left and right by word and arrow', () => {
    const metres = { distanceUnit: 'm' } as const;
    expect(lieWords(SHOT, metres, 2.54)).toBe('cut 31° → right, 0.84 m to the ghost ball');
    expect(lieWords({ ...SHOT, cutRad: -0.5 }, metres, 2.54)).toContain('29° ← left');
    expect(lieWords({ ...SHOT, cutRad: 0 }, metres, 2.54)).toContain('straight');
  });

  it('tell what stands against it', () => {
    expect(hindranceLines(SHOT, 3)).toEqual([]);
    const hindered: PositionShot = {
      ...SHOT,
      inTheWay: [
        { mover: 'cue', what: 8 },
        { mover: 'object', what: 'jaw' },
      ],
      least: { elevationRad: (6 * Math.PI) / 180, over: 'cushion' },
      bridge: 'nowhere',
    };
    expect(hindranceLines(hindered, 3)).toEqual([
      'The 8 is in the way of the cue ball.',
      'The point of the pocket is in the way of the 3.',
      'Cue raised 6° or more, over the cushion.',
      'There is no room for a bridge hand.',
    ]);
  });
});

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

  it.each([0.3, 0.75, 1.5, 2.5, 3.4, 4.8])('call %d m/s what Shot calls it', (speedMps) => {
    const option = { ...WAY.option, stroke: { ...WAY.option.stroke, speedMps } };
    const { word } = tileWords('speed', openShot({ speedMps }).model, 'ghost-ball');
    expect(wayName({ way: WAY.way, option })).toBe(`outside, ${word}, roll`);
  });

  it('call a little side so, and not none', () => {
    const way = { ...WAY.way, side: 'none' } as const;
    expect(wayName({ way, option: struck(-0.056) })).toBe('a touch of side, soft, roll');
    expect(strokeWords({ option: struck(-0.056) }, speedScale('mps', BED))).toContain(
      '0.06 R ← left',
    );
  });

  it.each([
    ['speed', 'speed window narrow; full if slow, thin if fast'],
    ['direction', 'little room for the line of the cue; thin aimed left, full aimed right'],
    ['height', 'little room for the tip’s height; full if higher'],
    ['elevation', 'little room for how high the butt is'],
    ['kit', 'hangs on what is not measured of the kit'],
  ] as const)('say why it is hard where that is the %s', (hardest, words) => {
    expect(reasonWords({ ...WAY, hardest })).toBe(words);
  });

  it('count more side away from the middle, left side too', () => {
    // Side is left: the low end is more of it.
    expect(reasonWords({ ...WAY, hardest: 'side' })).toBe(
      'little room for the side; thin with more, miscue with less',
    );
  });

  it('say the reason alone where no window is known', () => {
    expect(reasonWords({ ...WAY, windows: null })).toBe('speed window narrow');
  });

  it('tell scratches, and the zone where there is one', () => {
    expect(outcomeWords(WAY)).toEqual(['scratch 8 %']);
    const zoned = { ...WAY, scratch: 0, goodPosition: 0.5 };
    expect(outcomeWords(zoned)).toEqual(['goes at all 41 %']);
    expect(`${leadLabel(zoned)} ${percentWords(leadShare({ ...zoned, chance: 0.4 }))}`).toBe(
      'goes and in the zone 20 %',
    );
    expect(`${leadLabel(WAY)} ${percentWords(leadShare(WAY))}`).toBe('goes 41 %');
  });

  it('tell the stroke in figures', () => {
    expect(strokeWords(WAY, speedScale('mps', BED))).toBe(
      '¼ R ← left, ⅛ R ↑ high, cue 3° up, 0.9 m/s',
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
    expect(fanLine(rests, SHAPE)).toBe('true: 4.0 up, 2.0 from the left');
    const scratch = ending('thin', { kind: 'pocketed', pocket: 'far-left', timeS: 1 });
    expect(fanLine(scratch, SHAPE)).toBe('thin: scratch in the far left pocket');
  });
});

describe('the drawing in words', () => {
  it('tells balls, what is played and the zone', () => {
    const { choose } = inventedChoose();
    const words = boardWords(choose, 'm');
    expect(words).toContain('Cue ball 2.4 diamonds up, 1.1 from the left');
    expect(words).toContain('12 ball');
    expect(words).toContain('The 11 is frozen to the 12');
    expect(words).toContain('The 3 into the far right pocket');
    expect(words).toContain(
      'Zone for the cue ball 3.4 diamonds up, 1.4 from the left, 0.50 m across',
    );
    expect(boardWords(choose, 'in')).toContain(', 20 in across');
  });

  it('tells the fan of the way that is looked at', async () => {
    const { choose } = inventedChoose();
    choose.compare();
    await expect.poll(() => choose.comparison.value.state).toBe('done');
    choose.choose(choose.comparison.value.ways[0] ?? null);
    await expect.poll(() => choose.fan.value.length).toBe(5);
    expect(boardWords(choose, 'm')).toMatch(/Where the cue ball rests, in diamonds: true: /);
  });
});
