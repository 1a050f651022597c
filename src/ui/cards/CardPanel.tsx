import { useEffect } from 'preact/hooks';
import { CARD_PARTS, type CardPart, type CardUnit } from '../../state/cards/cards-model';
import type { LaterModels } from '../app-models';
import { Choices } from '../controls/Choices';
import { PanelHeader } from '../kit/PanelHeader';
import { CardPaper, CardSides } from './CardPaper';
import { type CardApp, cardSides } from './card-words';
import { TakeAway } from './TakeAway';

const UNITS: readonly { readonly value: CardUnit; readonly content: string }[] = [
  { value: 'balls', content: 'ball widths' },
  { value: 'tips', content: 'tip widths' },
  { value: 'mm', content: 'mm' },
  { value: 'cm', content: 'cm' },
  { value: 'in', content: 'in' },
];

const PART_LABELS: Readonly<Record<CardPart, string>> = {
  level: 'Level cue',
  raised: 'Raised cue',
  pivot: 'Pivot length',
  throw: 'Throw',
  runs: 'Lag and run',
  player: 'Player’s name',
};

/** A card for the cue case: the kit in play on two sides of paper. */
export function CardPanel({ app }: { app: CardApp & LaterModels<'router'> }) {
  const { cards } = app;
  useEffect(() => cards.watch(), [cards]);
  const figures = cards.figures.value;
  return (
    <>
      <PanelHeader router={app.router} title="Card" />
      <p class="place-note">
        The kit in play on paper, A6, two sides. A card may be allowed where a phone is not: ask.
      </p>
      <div class="card-wants">
        <Choices
          label="What stands on it"
          isLabelShown
          items={CARD_PARTS.map((value) => ({
            value,
            content: `${cards.parts.value.has(value) ? '✓ ' : ''}${PART_LABELS[value]}`,
          }))}
          isChosen={(part) => cards.parts.value.has(part)}
          onChoose={(part) => {
            const parts = new Set(cards.parts.peek());
            if (!parts.delete(part)) parts.add(part);
            cards.parts.value = parts;
          }}
        />
        <Choices
          label="Aims in"
          isLabelShown
          items={UNITS}
          isChosen={(unit) => cards.unit.value === unit}
          onChoose={cards.setUnit}
        />
      </div>
      {figures ? (
        <>
          <TakeAway cards={cards} name="leeway-card" />
          <CardSides>
            {cardSides(app, figures).map((blocks, at) => {
              const label = at === 0 ? 'Front of the card' : 'Back of the card';
              return <CardPaper key={label} label={label} blocks={blocks} />;
            })}
          </CardSides>
        </>
      ) : (
        <p>Working the card out…</p>
      )}
    </>
  );
}
