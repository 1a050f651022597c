import { useRef } from 'preact/hooks';
import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import { measuredShelves } from '../../state/measure/sureness';
import { DEMO_CATALOGUE } from '../../store/demo-catalogue';
import type { Choice, Named, ShelfName } from '../../store/records';
import type { LaterModels } from '../app-models';
import { RecordName } from '../kit/RecordName';
import { SHELF_LABELS } from '../kit/shelf-labels';

interface Props {
  readonly app: LaterModels<'kit' | 'measure'>;
  /** What the attempt was played with. */
  readonly choice: Choice;
  /** What was known before it. */
  readonly earlier: KitKnowledge;
}

/** Asks what to call that which an attempt was the first to measure, while it has an example's name. */
export function NameOwn(props: Props) {
  const { kit } = props.app;
  // As it was at first: a name that is being given does not take its field away.
  const asked = useRef(newlyMeasured(props)).current;
  return (
    <>
      {asked.map((shelf) => (
        <RecordName
          key={shelf}
          app={props.app}
          shelf={shelf}
          record={kit.current[shelf].value}
          label={`${SHELF_LABELS[shelf]}: yours now. What do you call it?`}
        />
      ))}
    </>
  );
}

/** Those of which this attempt was the first to tell enough, and which have an example's name. */
function newlyMeasured({ app: { kit, measure }, earlier, choice }: Props): readonly ShelfName[] {
  const known = measuredShelves(measure.before.peek(), earlier);
  return measure.measured.peek().filter((shelf) => {
    const { id, name } = kit.current[shelf].peek();
    const examples: readonly Named[] = DEMO_CATALOGUE[shelf];
    const isExample = examples.some((one) => one.id === id && one.name === name);
    return isExample && choice[shelf] === id && !known.includes(shelf);
  });
}
