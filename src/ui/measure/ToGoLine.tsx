import type { LaterModels } from '../app-models';
import { toGoWords } from './gain-words';
import { isAlike } from './lesson-of';

interface Props {
  readonly app: LaterModels<'measure'>;
  /** How many shots were left before the last one; left out where that is not known. */
  readonly before?: number | null | undefined;
}

/** How far it still is to a sure aim for the shot on Shot, or that it is reached. */
export function ToGoLine({ app: { measure }, before }: Props) {
  const toGo = measure.toGo.value;
  const [best] = measure.offers.value;
  if (toGo === null) return null;
  const isNext = !!best && !!toGo.first && isAlike(best.shot, toGo.first.shot);
  const words = toGoWords(toGo, { isNext, before });
  if (toGo.shots !== 0) return <span>{words}</span>;
  return (
    <b>
      <span aria-hidden="true">✓</span> {words}
    </b>
  );
}
