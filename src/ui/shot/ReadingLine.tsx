import { SideWord } from '../SideWord';
import { inWords, type Reading } from './answer-words';

/** A reading on one line of text; its side as arrow and word. */
export function ReadingLine({ reading }: { reading: Reading }) {
  const { nearness, figure, noun, side, rest, place } = reading;
  if (place) return <span class="reading-line">{inWords(reading)}</span>;
  return (
    <span class="reading-line">
      {nearness && `${nearness} `}
      <b>
        {figure}
        {noun && ` ${noun}`}
      </b>
      {side !== 'none' && ' '}
      <SideWord side={side} />
      {rest && side !== 'none' && ` ${rest}`}
    </span>
  );
}
