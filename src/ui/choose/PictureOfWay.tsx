import type { ComponentChildren } from 'preact';
import type { Models } from '../app-models';
import { PictureButton } from '../cards/TakeAway';

/** What is said of a way beside and under the table. */
const WORDS = [
  '.way-title, .way-pair, .way-called, .way-stroke, .way-reason, .aim-point, .way-warning, .fan-lines li',
];

interface Props {
  readonly app: Models<'cards'>;
  readonly isOff: boolean;
  /** What else can be done with it, in the same row. */
  readonly children?: ComponentChildren;
}

/** The way that is looked at, as it is drawn on the table, as a picture with its words. */
export function PictureOfWay({ app: { cards }, isOff, children }: Props) {
  return (
    <div class="way-take">
      {children}
      <PictureButton
        cards={cards}
        name="leeway-way"
        from=".table-board"
        words={WORDS}
        isOff={isOff}
      />
    </div>
  );
}
