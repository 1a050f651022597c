import type { LaterModels } from '../app-models';
import { toGoWords } from './gain-words';
import { isAlike } from './lesson-of';

interface Props {
  readonly app: LaterModels<'measure'>;
  /** How many shots were left before the last one; left out where that is not known. */
  readonly before?: number | null | undefined;
  /** Whether it is yet to be said what the next shot is for. */
  readonly saysWhy?: boolean;
}

/** How far it still is to a sure aim for the shot on Shot, or that it is reached. */
export function ToGoLine({ app: { measure }, before, saysWhy = false }: Props) {
  const toGo = measure.toGo.value;
  const [best] = measure.offers.value;
  if (toGo === null) return null;
  const isNext = !!best && !!toGo.first && isAlike(best.shot, toGo.first.shot);
  const first = isNext && !saysWhy ? null : toGo.first;
  const words = toGoWords({ ...toGo, first }, { isNext, before });
  if (toGo.shots !== 0) return <span>{words}</span>;
  return (
    <b>
      <span aria-hidden="true">✓</span> {words}
    </b>
  );
}
