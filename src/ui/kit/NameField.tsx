import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { EditResult } from '../../state/edit-result';
import { useProblem } from '../use-problem';

interface Props {
  readonly class?: string;
  readonly label?: string | undefined;
  /** Gives the name; says why not where it cannot be used. */
  onRename(name: string): EditResult;
  /** The field to type in, with what ties it to its label, and where its name goes. */
  children(field: FieldTies, rename: (name: string) => void): ComponentChildren;
}

interface FieldTies {
  readonly id: string;
  readonly 'aria-invalid': boolean;
  readonly 'aria-describedby': string;
}

/** A name to type. One that cannot be used is told beside it. */
export function NameField(props: Props) {
  const { class: className = 'record-name', label = 'Name', onRename, children } = props;
  const [problem, tell] = useProblem();
  const id = useId();
  const problemId = useId();
  const ties = { id, 'aria-invalid': problem.value !== '', 'aria-describedby': problemId };
  return (
    <div class={className}>
      <label for={id}>{label}</label>
      {children(ties, (name) => tell(onRename(name)))}
      <span class="field-problem" id={problemId}>
        {problem.value}
      </span>
    </div>
  );
}
