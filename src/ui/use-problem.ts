import { type ReadonlySignal, useSignal } from '@preact/signals';
import type { EditResult } from '../state/edit-result';

type Told = readonly [problem: ReadonlySignal<string>, tell: (result: EditResult) => boolean];

/** Why the last change could not be made, empty where it could; and where a change says what became of it. */
export function useProblem(): Told {
  const problem = useSignal('');
  const tell = (result: EditResult) => {
    problem.value = result.ok ? '' : result.problem;
    return result.ok;
  };
  return [problem, tell];
}
