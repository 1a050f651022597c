import { INPUT_RANGES } from '../../src/engine/direct/input-ranges';
import type { Shot } from '../../src/engine/direct/shot';
import { findKitProblem } from '../../src/engine/kit/kit-numbers';
import { isWithin, type Range } from '../../src/engine/numerics/range';
import { DEMO_CATALOGUE } from '../../src/store/demo-catalogue';
import { kitOf } from '../../src/store/kit-of';
import type { ShelfName, Shelves } from '../../src/store/records';

/** What the engine holds against a record, played with our own examples of the rest. */
export function kitProblemOf<S extends ShelfName>(shelf: S, record: Shelves[S]) {
  const [cue] = DEMO_CATALOGUE.cues;
  const [cloth] = DEMO_CATALOGUE.cloths;
  const [balls] = DEMO_CATALOGUE.balls;
  const [table] = DEMO_CATALOGUE.tables;
  if (!(cue && cloth && balls && table)) throw new Error('The demo catalogue has an empty shelf');
  const kit: Shelves = { cues: cue, cloths: cloth, balls, tables: table, [shelf]: record };
  return findKitProblem(kitOf(kit.cues, kit.cloths, kit.balls, kit.tables));
}

/** The inputs of a shot that the engine would not take. */
export function shotProblemsOf(shot: Shot): string[] {
  const ranges: Readonly<Record<string, Range>> = INPUT_RANGES;
  const values: Readonly<Record<string, unknown>> = { ...shot };
  return Object.keys(ranges).filter((name) => {
    const range = ranges[name];
    const isLeftOut = name === 'objectDistanceM' && !(name in values);
    return range !== undefined && !isLeftOut && !isWithin(range, values[name]);
  });
}
