import type { ToGo } from '../../engine/fit/fit-report';
import { toGoWords } from './gain-words';

interface Props {
  readonly toGo: ToGo;
  /** How many shots were left before the last one; left out where that is not known. */
  readonly before?: number | null | undefined;
}

/** How far it still is to a sure aim for the shot on Shot, or that it is reached. */
export function ToGoLine({ toGo, before }: Props) {
  const words = toGoWords(toGo, before);
  if (toGo.shots !== 0) return <span>{words}</span>;
  return (
    <b>
      <span aria-hidden="true">✓</span> {words}
    </b>
  );
}
