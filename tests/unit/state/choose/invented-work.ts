import { strokeAt } from '../../../../src/engine/plan/option-grid';
import type { FanPlay, RankedWay } from '../../../../src/engine/plan/ranked-way';
import type { Option } from '../../../../src/engine/plan/solve-option';
import type { OptionJob, PickJob, SweepJob } from '../../../../src/worker/engine-work';

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

/** Every one rests in a place of its own, so that none betters another. */
function refine({ option }: OptionJob): RankedWay {
  const { place, chance } = option;
  return {
    option,
    way: { side: 'none', arrival: 'roll', isDrag: false, speed: 'soft', isRaised: false },
    chance: chance.share * 0.9,
    chanceError: 0.01,
    hardest: 'direction',
    windows: null,
    rest: { xM: place, yM: 0, sdM: 0, places: [] },
    goodPosition: null,
    scratch: 0,
  };
}

function fan({ option }: OptionJob): readonly FanPlay[] {
  const play = { ok: true, balls: [], events: [], endS: 1, complete: true } as const;
  return [{ hit: 'true', aimRad: option.stroke.aimRad, play }];
}

/** What workers would make of a job, invented and quick. */
const INVENTED_WORK = { sweep, pick, refine, fan };

export function workOut(name: string, job: unknown): unknown {
  const work = Object.entries(INVENTED_WORK).find(([known]) => known === name)?.[1];
  if (work === undefined) throw new Error(`nobody does ${name}`);
  return (work as (job: unknown) => unknown)(job);
}
