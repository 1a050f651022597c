import { playOn } from '../../../../src/engine/goal/scene';
import { strokeAt } from '../../../../src/engine/plan/option-grid';
import type { PocketChance, PocketsQuestion } from '../../../../src/engine/plan/pocket-chances';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { Option } from '../../../../src/engine/plan/solve-option';
import { wayOf } from '../../../../src/engine/plan/way';
import type { ChanceRange, RangeJob } from '../../../../src/engine/player/some-players';
import type { Work } from '../../../../src/worker/engine-pool';
import type { OptionJob, PickJob, ResultOf, SweepJob } from '../../../../src/worker/engine-work';
import { INVENTED_WAYS } from './all-ways/invented-ways';

/** Every so many places of a grid are looked at: few enough to be quick, in every stretch. */
const EVERY = 13;
const PICKED = 9;

/** Invented chances: all over the place, and always the same. */
function shareAt(place: number): number {
  return ((place * 7919) % 1009) / 1009;
}

function sweep({ grid, stretch }: SweepJob): readonly Option[] {
  const options: Option[] = [];
  for (let place = stretch.from; place < stretch.to; place++) {
    const stroke = place % EVERY === 0 ? strokeAt(grid, place) : null;
    if (stroke === null) continue;
    const sds = { direction: 1, side: 0, height: 0, elevation: 0, speed: 0, kit: 0 };
    options.push({
      place,
      stroke: { aimRad: 0.01, ...stroke },
      chance: { share: shareAt(place), sds },
    });
  }
  return options;
}

function pick({ options }: PickJob): readonly Option[] {
  return [...options].sort((a, b) => b.chance.share - a.chance.share).slice(0, PICKED);
}

/** Named as the engine names it; each rests in a place of its own, so that none betters another. */
function refine({ asked, option }: OptionJob): RankedWay {
  const { place, chance, stroke } = option;
  return {
    option,
    way: wayOf(asked.question, stroke, asked.leastElevationRad),
    chance: chance.share * 0.9,
    chanceError: 0.01,
    hardest: 'direction',
    windows: null,
    rest: { xM: place, yM: 0, sdM: 0.1, places: [{ xM: 0.2, yM: 0.3 }] },
    goodPosition: asked.scene.zone === null ? null : 0.25,
    clean: 1,
    scratch: 0,
  };
}

const FAN_RAD = { true: 0, thin: 0.012, full: -0.012, 'missed-thin': 0.03, 'missed-full': -0.03 };

/** Strokes a fixed angle off, played on the table. */
function fan({ asked, option }: OptionJob): readonly FanPlay[] {
  const hits = Object.keys(FAN_RAD) as (keyof typeof FAN_RAD)[];
  return hits.flatMap((hit) => {
    const aimRad = option.stroke.aimRad + FAN_RAD[hit];
    const play = playOn(asked.scene, { ...option.stroke, aimRad });
    return play === null ? [] : [{ hit, aimRad, play }];
  });
}

/** Twenty in a hundred wide. */
function range({ share }: RangeJob): ChanceRange {
  return { low: share - 0.1, high: share + 0.1 };
}

/** Of every pocket some other chance: 10 %, 30 %, and so on. */
function pockets({ shape }: PocketsQuestion): readonly PocketChance[] {
  return shape.pockets.map(({ name: pocket }, at) => ({ pocket, share: (0.1 + 0.2 * at) % 1 }));
}

/** What workers would make of a job, invented and quick. */
const INVENTED_WORK = { sweep, pick, refine, fan, range, pockets, ...INVENTED_WAYS };

type Invented = typeof INVENTED_WORK;

/** Answers to some jobs in place of the invented ones; a promise keeps its job waiting. */
export type Answers = {
  readonly [N in keyof Invented]?: (
    ...job: Parameters<Invented[N]>
  ) => ReturnType<Invented[N]> | Promise<ReturnType<Invented[N]>>;
};

export function workOut(name: string, job: unknown, answers: Answers = {}): unknown {
  const all = { ...INVENTED_WORK, ...answers };
  const work = Object.entries(all).find(([known]) => known === name)?.[1];
  if (work === undefined) throw new Error(`nobody does ${name}`);
  return (work as (job: unknown) => unknown)(job);
}

/** The same as a port of the model, without workers. */
export function inventedWork(answers: Answers = {}): Work {
  return async (name, job, signal) => {
    signal?.throwIfAborted();
    return (await workOut(name, job, answers)) as ResultOf<typeof name>;
  };
}
