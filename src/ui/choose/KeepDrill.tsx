import { useSignal } from '@preact/signals';
import type { LaterModels, Models } from '../app-models';
import { useProblem } from '../use-problem';

interface Props {
  readonly app: Models<'router'> & LaterModels<'choose'>;
  /** What it is called until somebody says otherwise. */
  readonly name: string;
}

/** A name has room for no more. */
const LONGEST = 60;

/** Keeps the way looked at, to be played again: a tap more leads to where it is. */
export function KeepDrill({ app: { choose, router }, name }: Props) {
  const keptId = useSignal('');
  const [problem, tell] = useProblem();
  const isKept = choose.drills.value.some(({ id }) => id === keptId.value);
  const keep = () => {
    const kept = choose.keepDrill(name.slice(0, LONGEST));
    keptId.value = kept.ok ? kept.id : '';
    tell(kept);
  };
  if (!isKept && choose.wayToKeep.value === null) return null;
  const practise = () => router.visit('log', `practice/${keptId.value}`);
  return (
    <>
      <button type="button" class="button" onClick={isKept ? practise : keep}>
        {isKept ? 'Practise' : 'Keep'}
      </button>
      <output class={problem.value === '' ? 'visually-hidden' : ''}>
        {problem.value || (isKept && 'Kept, in Log under Practice.')}
      </output>
    </>
  );
}
