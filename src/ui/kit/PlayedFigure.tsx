import { tellingsOf, toldBy } from '../../state/kit-telling';
import type { ShelfName, Shelves } from '../../store/records';
import type { LaterModels } from '../app-models';
import { handShareWords, measuredFrom } from './played-words';
import { originWords } from './shelf-words';

interface Props {
  readonly app: LaterModels<'kit' | 'measure' | 'desk'>;
  readonly shelf: ShelfName;
  readonly record: Shelves[ShelfName];
}

/** What the app plays with, where that is not what was typed in below: readings have the last word. */
export function PlayedFigure({ app, shelf, record }: Props) {
  const { measure } = app;
  const shots = measure.shotsReadOn(shelf, record);
  const by = toldBy(app, shelf, record);
  if (shots === 0 || (by === 'numbers' && measure.isSettled.value)) {
    return <p class="place-note">{numbersWords(record)}</p>;
  }
  const [told] = Object.values(tellingsOf(app, shelf, record));
  const isInPlay = app.kit.current[shelf].value.id === record.id;
  return (
    <div class="played-figure">
      {by === 'readings' ? (
        <p>
          <strong>{told?.figure}</strong> {told?.short}, {measuredFrom(shots)}
        </p>
      ) : (
        <p>Its readings count once worked out in play.</p>
      )}
      <p class="place-note">
        Below: numbers before readings ({originWords(record)}).{' '}
        {isInPlay &&
          by === 'readings' &&
          handShareWords(shelf, measure.before.value, measure.knowledge.value)}{' '}
        To start afresh, strike its shots out under Measure, or mark a change below.
      </p>
    </div>
  );
}

function numbersWords(record: Shelves[ShelfName]): string {
  return record.origin === 'invented'
    ? 'An invented example. Change a number and it counts as yours.'
    : `Its numbers are ${originWords(record)}.`;
}
