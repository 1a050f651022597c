import type { LaterModels, Models } from '../app-models';
import { useProblem } from '../use-problem';

interface Props {
  readonly app: Models<'router'> & LaterModels<'choose'>;
  /** What it is called until somebody says otherwise. */
  readonly name: string;
}

/** A name has room for no more. */
const LONGEST = 60;

/** Keeps the way looked at, to be played again; of one that is kept it says so, and leads to where it is. */
export function KeepDrill({ app: { choose, router }, name }: Props) {
  const [problem, tell] = useProblem();
  const keptId = choose.keptAs.value;
  if (keptId === null && choose.wayToKeep.value === null) return null;
  const keep = () => tell(choose.keepDrill(name.slice(0, LONGEST)));
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
