import { useSignal } from '@preact/signals';
import type { LaterModels, Models } from '../app-models';

interface Props {
  readonly app: Models<'router'> & LaterModels<'choose'>;
  /** What it is called until somebody says otherwise. */
  readonly name: string;
}

/** A name has room for no more. */
const LONGEST = 60;

/** Keeps the way looked at, to be played again; of one that is kept it says so, and leads to where it is. */
export function KeepDrill({ app: { choose, router }, name }: Props) {
  const problem = useSignal('');
  const keptId = choose.keptAs.value;
  if (keptId === null && !choose.canKeep.value) return null;
  const keep = () => {
    const kept = choose.keepDrill(name.slice(0, LONGEST));
    problem.value = kept.ok ? '' : kept.problem;
  };
  return (
    <>
      <button
        type="button"
        class="button"
        onClick={() => (keptId === null ? keep() : router.visit('log', `practice/${keptId}`))}
      >
        {keptId === null ? (
          'Keep'
        ) : (
          <>
            ✓ Kept: <br />
            practise
          </>
        )}
      </button>
      <output class={problem.value === '' ? 'visually-hidden' : ''}>
        {problem.value || (keptId !== null && 'Kept, in Log under Practice.')}
      </output>
    </>
  );
}
