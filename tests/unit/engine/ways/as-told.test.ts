import { describe, expect, it } from 'vitest';
import { directGoal } from '../../../../src/engine/goal/goal';
import { laidTable } from '../../../../src/engine/goal/laid-table';
import type { NamedBall } from '../../../../src/engine/lie/position';
import type { TablePlay } from '../../../../src/engine/table/table-play';
import { drawnWay } from '../../../../src/engine/ways/drawn-chance';
import { refineFound } from '../../../../src/engine/ways/refine-found';
import { searchStretch } from '../../../../src/engine/ways/search-stretch';
import { waysStretches } from '../../../../src/engine/ways/stretches';
import { waysQuestion } from '../../../harness/ways-positions';

const SEARCH_TIMEOUT_MS = 120_000;

const at = (name: NamedBall['name'], xM: number, yM: number): NamedBall => ({ name, xM, yM });

/** The 1 banked off the left rail into the middle right pocket. */
const POSITION = [at('cue', 0.15, -0.6), at(1, 0, -0.25)];
const ONE = 1;

/** What the 1 meets until it falls, jaws left out: "cue", "nose near-left", "point far-left". */
function meetings({ events }: TablePlay): readonly string[] {
  const falls = events.findIndex(({ kind, ball }) => kind === 'pocketed' && ball === ONE);
  return events.slice(0, falls).flatMap((event) => {
    if (event.kind === 'hits-ball') return ['cue'];
    if (event.kind !== 'hits-cushion' || event.ball !== ONE || event.part === 'jaw') return [];
    return [`${event.part} ${event.cushion}`];
  });
}

describe('how many of the strokes that go do so as told', { timeout: SEARCH_TIMEOUT_MS }, () => {
  const question = waysQuestion(POSITION, { kinds: ['bank'], pocket: 'middle-right' });
  const found = waysStretches(question)
    .flatMap((part) => searchStretch(question, part).ways)
    .filter(({ goal }) => goal.via.length === 2);

  it('is counted in the same draws as the chance', () => {
    const laid = laidTable(POSITION, question.shape);
    expect(laid.names[ONE]).toBe(1);
    const [way] = found;
    if (!way) throw new Error('there is a bank');
    const told = refineFound(question, way);
    const { goal, headingRad, option, fullerSide } = told;
    const drawn = drawnWay(question, { goal, headingRad, stroke: option.stroke }, fullerSide);
    const asTold = drawn.going.filter((play) =>
      /^cue,nose (near|far)-left$/.test(meetings(play).join()),
    );
    expect(drawn.going.length).toBeGreaterThan(20);
    expect(told.asTold).toBe(asTold.length / drawn.going.length);
    expect(told.asTold).toBeGreaterThan(0.5);
  });

  it('is none where the way is told otherwise, though the ball goes as often', () => {
    const [way] = found;
    if (!way) throw new Error('there is a bank');
    const truly = drawnWay(question, way, 0);
    const other = drawnWay(question, { ...way, goal: directGoal(1, 'middle-right') }, 0);
    expect(other.chance).toBe(truly.chance);
    expect(other.asTold).toBeLessThan(0.1);
    expect(truly.asTold).toBeGreaterThan(other.asTold);
  });
});
