import { useSignal } from '@preact/signals';
import type { CardsModel } from '../../state/cards/cards-model';
import { capitalised } from '../choose/table-words';
import { savedWords } from '../kit/backup-words';
import { drawnPicture } from './drawn-picture';

interface Props {
  readonly cards: CardsModel;
  /** What is drawn: the first of the page that this names. */
  readonly from: string;
  /** The file's name, without its ending. */
  readonly name: string;
  /** What is written under the picture: all of the page that these name, one after the other. */
  readonly words?: readonly string[];
  /** What is written after that. */
  lines?(): readonly string[];
  readonly isOff?: boolean;
}

/** A drawing as a picture, by the share sheet or as a file. */
export function PictureButton({ cards, from, name, words = [], lines, isOff }: Props) {
  const told = useSignal('');
  return (
    <>
      <button
        type="button"
        class="button"
        disabled={isOff}
        onClick={async () => {
          const png = drawnPicture(
            from,
            [...words.flatMap(wordsOf), ...(lines?.() ?? [])].map(capitalised),
          );
          told.value = png
            ? savedWords(await cards.save(`${name}.png`, png))
            : 'No picture: this browser would not draw it.';
        }}
      >
        Picture
      </button>
      <output class="place-problem picture-told">{told.value}</output>
    </>
  );
}

/** What is to be read in what a selector names, an element a line. */
function wordsOf(selector: string): readonly string[] {
  return [...document.querySelectorAll(selector)]
    .map((element) => (element.textContent ?? '').replace(/\s+/g, ' ').trim())
    .filter((line) => line !== '');
}

/** Paper, or a picture for who has no printer. */
export function TakeAway({ cards, name }: Pick<Props, 'cards' | 'name'>) {
  const { print } = cards;
  return (
    <div class="backup-actions">
      {print && (
        <button type="button" class="button button-main" onClick={print}>
          Print
        </button>
      )}
      <PictureButton cards={cards} from=".card-sides" name={name} />
    </div>
  );
}
