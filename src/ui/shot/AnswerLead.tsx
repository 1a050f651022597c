import { SideWord } from '../SideWord';
import type { Reading } from './answer-words';

/** The answer in one huge line: a figure and what it is of, or the place that is hit. */
export function AnswerLead({ reading }: { reading: Reading }) {
  const { nearness, figure, noun, side, rest, place } = reading;
  if (place) return <PlaceLead reading={reading} />;
  return (
    <span class="answer-lead">
      <span class="answer-figure">{figure}</span>{' '}
      <span class="answer-where">
        <span class="answer-noun">
          {noun} {nearness && <span class="answer-nearness">{nearness}</span>}
        </span>{' '}
        <span class="answer-side">
          <SideWord side={side} class="answer-side-word" />
          {side === 'none' ? rest : ` ${rest}`}
        </span>
      </span>
    </span>
  );
}

function PlaceLead({ reading: { noun, side, rest, place } }: { reading: Reading }) {
  return (
    <span class="answer-lead">
      <span class="answer-place">
        {side === 'none' ? 'Centre' : <SideWord side={side} class="answer-side-word" />}
        {place === 'edge' && ' edge'}
      </span>{' '}
      <span class="answer-of">
        {noun && <span class="answer-nearness">{noun}</span>} {rest}
      </span>
    </span>
  );
}
