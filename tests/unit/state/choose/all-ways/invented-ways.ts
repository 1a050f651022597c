import { directCut, directGoal, type Goal } from '../../../../../src/engine/goal/goal';
import { laidTable, playLaid } from '../../../../../src/engine/goal/laid-table';
import { shotFrom } from '../../../../../src/engine/goal/shot-from-position';
import type { FanPlay } from '../../../../../src/engine/plan/ranked-way';
import type { FoundWay } from '../../../../../src/engine/ways/found-way';
import type { StretchFound } from '../../../../../src/engine/ways/stretch-found';
import type { WaysStretch } from '../../../../../src/engine/ways/stretches';
import type { WaysQuestion } from '../../../../../src/engine/ways/ways-question';
import type { NoWay } from '../../../../../src/engine/ways/why-none';
import { tellLaid } from '../../../../../src/engine/worth/laid-way';
import type {
  PlaysTellJob,
  SafetyRefineJob,
  SafetySearchJob,
  WaysPartsJob,
  WaysPickJob,
  WaysRefineJob,
  WaysSearchJob,
} from '../../../../../src/engine/worth/plays-work';
import { fanOfSafety } from '../../../../../src/engine/worth/refine-safety';
import type { FoundSafety, ToldSafety } from '../../../../../src/engine/worth/safety';
import type { SafetyStretch } from '../../../../../src/engine/worth/search-safety';
import type { Worth } from '../../../../../src/engine/worth/worth';
import type { Play, WorthyWay } from '../../../../../src/engine/worth/worthy-ways';
import type { SafetyFanJob, WayLaidJob, WaysFanJob } from '../../../../../src/worker/engine-work';

const PARTS = 10;
/** Invented: the 3 into the far right corner by every kind but a carom. */
const GOALS: readonly Goal[] = [
  directGoal(3, 'far-right'),
  {
    kind: 'bank',
    ball: 3,
    pocket: 'far-right',
    via: [
      { ball: 3, by: 'cue' },
      { cushion: 'left', by: 3 },
    ],
  },
  {
    kind: 'kick',
    ball: 3,
    pocket: 'far-right',
    via: [
      { cushion: 'near', by: 'cue' },
      { cushion: 'right', by: 'cue' },
      { ball: 3, by: 'cue' },
    ],
  },
  {
    kind: 'combination',
    ball: 3,
    pocket: 'far-right',
    via: [
      { ball: 8, by: 'cue' },
      { ball: 3, by: 8 },
    ],
  },
];

const HEADING_RAD = 0.4;
/** Working a way out changes its stroke a little. */
const BETTERED = 1.01;

function wayOf({ position, shape, kit }: WaysQuestion, at: number): FoundWay | null {
  const goal = GOALS[at % GOALS.length] ?? directGoal(3, 'far-right');
  const shot = shotFrom(position, directCut(3, 'far-right'), shape, kit);
  if (goal.kind === 'direct' && !shot.ok) return null;
  return {
    goal,
    headingRad: goal.kind === 'direct' && shot.ok ? shot.headingRad : HEADING_RAD,
    stroke: { aimRad: 0, side: 0, height: 0.1, elevationRad: 0.05, speedMps: 1 + at / 10 },
    rough: ((at * 7) % PARTS) / PARTS,
    way: { side: 'none', arrival: 'roll', isDrag: false, speed: 'medium', isRaised: at === 5 },
    doubleKiss: false,
    shot: goal.kind === 'direct' && shot.ok ? shot : null,
    missPerRad: 1,
    ends: 1,
  };
}

function refine({ way }: WaysRefineJob): WorthyWay {
  const { goal, headingRad, stroke, doubleKiss, shot } = way;
  const end = (value: number, endedBy: 'full' | 'thin') => ({ value, endedBy });
  const around = (value: number, by: number) => ({
    low: end(value - by, 'full'),
    high: end(value + by, 'thin'),
    directionPerUnit: null,
  });
  return {
    goal,
    headingRad,
    doubleKiss,
    shot,
    fullerSide: 1,
    asTold: goal.kind === 'combination' ? 0.2 : 0.9,
    option: {
      place: 0,
      stroke: { ...stroke, speedMps: BETTERED * stroke.speedMps },
      chance: {
        share: way.rough,
        sds: { direction: 1, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 },
      },
    },
    way: way.way,
    chance: way.rough,
    chanceError: 0.01,
    hardest: 'direction',
    windows: {
      aimRad: {
        low: end(-0.01, 'full'),
        high: end(0.02, 'thin'),
        directionPerUnit: null,
      },
      speedMps: around(stroke.speedMps, 0.2),
      side: around(stroke.side, 0.1),
      height: around(stroke.height, 0.1),
      elevationRad: around(stroke.elevationRad, 0.02),
    },
    // Each leaves the cue ball elsewhere.
    rest: { xM: stroke.speedMps - 1.5, yM: 0, sdM: 0.1, places: [{ xM: 0.2, yM: 0.3 }] },
    goodPosition: null,
    clean: 1,
    scratch: 0.08,
    worth: {
      worth: way.rough / 2,
      worthError: 0.01,
      goes: way.rough,
      goesError: 0.01,
      wins: 0,
      after: { ball: 8, pocket: 'near-left', chance: 0.5 },
      miss: {
        share: 1 - way.rough,
        theirBest: 0.6,
        hooked: 0.1,
        foul: 0.1,
        thin: { share: 0.6 * (1 - way.rough), theirBest: 0.2 },
        full: { share: 0.4 * (1 - way.rough), theirBest: 0.7 },
      },
      scratch: 0.08,
    },
    ...(goal.kind === 'kick' ? { slope: { turnRad: 0.02, firmerRad: 0.013 } } : {}),
  };
}

const FAN_RAD = { true: 0, thin: 0.012, full: -0.012, 'missed-thin': 0.03, 'missed-full': -0.03 };

function fan({ question, told }: WaysFanJob): readonly FanPlay[] {
  const { position, shape, kit } = question;
  const hits = Object.keys(FAN_RAD) as (keyof typeof FAN_RAD)[];
  return hits.flatMap((hit) => {
    const aimRad = FAN_RAD[hit];
    const stroke = { ...told.option.stroke, aimRad: told.headingRad + aimRad };
    const play = playLaid(laidTable(position, shape), stroke, kit);
    return play === null ? [] : [{ hit, aimRad, play }];
  });
}

/** Invented: the 3 hit straight, or off the far rail, softly. */
const SAFETIES: readonly FoundSafety[] = [
  [{ ball: 3, by: 'cue' } as const],
  [{ cushion: 'far', by: 'cue' } as const, { ball: 3, by: 'cue' } as const],
].map((via, at) => ({
  goal: { kind: 'safety', ball: null, pocket: null, via },
  headingRad: HEADING_RAD + at / 10,
  stroke: { aimRad: 0, side: 0, height: 0, elevationRad: 0.05, speedMps: 1 },
  way: { side: 'none', arrival: 'roll', isDrag: false, speed: 'soft', isRaised: false },
  rough: 0.8 - at / 10,
  leaves: 0.2,
}));

function refineSafety({ safety: { rough, leaves, ...found } }: SafetyRefineJob): ToldSafety {
  const worth: Worth = {
    worth: rough,
    worthError: 0.01,
    goes: 0.9,
    goesError: 0.01,
    wins: 0,
    after: null,
    miss: { share: 1, theirBest: leaves, hooked: 0.4, foul: 0.1, thin: null, full: null },
    scratch: 0.05,
  };
  const rest = { xM: 0, yM: 0, sdM: 0.1, places: [{ xM: 0.2, yM: 0.3 }] };
  return { ...found, worth, rest, struck: { ball: 3, rest: { ...rest, xM: 0.3 } } };
}

/** What workers would make of a search for all ways, invented and quick. */
export const INVENTED_WAYS = {
  waysParts: (_: WaysQuestion): readonly WaysStretch[] =>
    Array.from({ length: PARTS }, (_, stroke) => ({ search: 'kick', stroke })),
  waysRaised: (_: WaysPartsJob): readonly WaysStretch[] => [],
  waysSearch({ question, stretch }: WaysSearchJob): StretchFound {
    const way = 'stroke' in stretch ? wayOf(question, stretch.stroke) : null;
    // Each is found twice, which is not worth two places in the list.
    return { ways: way ? [way, { ...way, rough: -1 }] : [], failed: [] };
  },
  waysPick: ({ found, rule }: WaysPickJob): readonly FoundWay[] =>
    found
      .filter(({ rough }) => rough >= 0)
      .sort((a, b) => b.rough - a.rough)
      .slice(0, rule.most),
  waysRefine: refine,
  safetyParts: (_: WaysQuestion): readonly SafetyStretch[] =>
    SAFETIES.map((_, stroke) => ({ search: 'safety-kick', stroke })),
  safetySearch: ({ stretch }: SafetySearchJob): readonly FoundSafety[] =>
    SAFETIES.slice(stretch.stroke, stretch.stroke + 1),
  safetyPick: (found: readonly FoundSafety[]) => found,
  safetyRefine: refineSafety,
  safetyFan: ({ question, told }: SafetyFanJob) => fanOfSafety(question, told),
  // Against the order in which they are worked out, so that at the end some rows have to move.
  playsTell: ({ refined, safeties }: PlaysTellJob): readonly Play[] => [
    ...safeties,
    ...[...refined].sort((a, b) => a.option.stroke.speedMps - b.option.stroke.speedMps),
  ],
  wayLaid: ({ question, way }: WayLaidJob) => tellLaid(question, way),
  waysFan: fan,
  waysNone: (_: WaysPartsJob): readonly NoWay[] => [{ kind: 'carom', why: 'in-the-way' }],
};
