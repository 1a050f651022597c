import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { CARD_SIZE, type CardBlock, layOutCard } from '../../diagram/card-sheet';
import './Cards.css';

interface Props {
  readonly label: string;
  readonly blocks: readonly CardBlock[];
  /** What is drawn where the blocks leave room for it, from above. */
  readonly children?: ComponentChildren;
}

/** A side of a card, black on white, as it is printed. */
export function CardPaper({ label, blocks, children }: Props) {
  const { texts, rules, boxes, drawingY } = layOutCard(blocks);
  const { width, height } = CARD_SIZE;
  return (
    <svg
      class="card-side"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={`${label}. ${texts.map(({ text }) => text).join(' ')}`}
    >
      <title>{label}</title>
      <rect class="card-paper" width={width} height={height} />
      {[rules, boxes].map((lines) => lines && <path key={lines} class="card-line" d={lines} />)}
      <g transform={`translate(0 ${drawingY})`}>{children}</g>
      {texts.map(({ text, look, size, ...at }, index) => (
        <text key={index} class={`card-text is-${look}`} font-size={size.toFixed(1)} {...at}>
          {text}
        </text>
      ))}
    </svg>
  );
}

/** What prints is the cards on the page, and nothing else, as long as they are there. */
export function CardSides({ children }: { children: ComponentChildren }) {
  useEffect(() => {
    document.documentElement.dataset.prints = 'card';
    return () => {
      delete document.documentElement.dataset.prints;
    };
  }, []);
  return <div class="card-sides">{children}</div>;
}
