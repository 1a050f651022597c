import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import {
  type ShareOutcome,
  type SharePort,
  type ShareWay,
  shareFile,
} from '../../sensors/share-file';
import { tipScale } from '../../units/tip-unit';
import type { LengthUnit } from '../../units/unit-names';
import type { DeskModel } from '../desk-model';
import type { KitInPlay } from '../kit-in-play';
import type { KnownKit } from '../measure/create-known-kit';
import { knownAlongShot } from '../measure/known-along-shot';
import { type CardFigures, type CardSetting, workOutCard } from './card-figures';

/** In what an aim is told on a card: a length, widths of a ball, or of the cue's tip. */
export type CardUnit = LengthUnit | 'balls' | 'tips';

/** What may stand on a card. */
export const CARD_PARTS = ['level', 'raised', 'pivot', 'throw', 'runs', 'player'] as const;
export type CardPart = (typeof CARD_PARTS)[number];

/** What can be taken away on paper, or as a picture. */
export interface CardsModel {
  /** The figures of the card of the kit in play; null while they are worked out. */
  readonly figures: ReadonlySignal<CardFigures | null>;
  /** Works them out as long as somebody looks; gives the way to stop it. */
  watch(): () => void;
  /** What is to stand on the card. */
  readonly parts: Signal<ReadonlySet<CardPart>>;
  readonly unit: ReadonlySignal<CardUnit>;
  setUnit(unit: CardUnit): void;
  /** Prints the page; null where the browser cannot. */
  readonly print: (() => void) | null;
  /** Hands a PNG over; called within a tap. */
  save(name: string, png: Uint8Array<ArrayBuffer>): Promise<ShareOutcome>;
}

export interface CardsPorts {
  readonly kit: Pick<KitInPlay, 'current'>;
  readonly measure: Pick<KnownKit, 'knowledge' | 'isSettled'>;
  readonly desk: Pick<DeskModel, 'preferences'>;
  readonly sharing: SharePort;
  readonly print: (() => void) | null;
  /** Does work after whatever waits, unless called off. */
  readonly soon: (work: () => void) => () => void;
}

const LEVEL_BED = { alongM_per_M: 0, rightM_per_M: 0 };
/** The contacts that a card tells of, by the marks on the tip's face. */
const MARKS = [1, 2];

export function createCardsModel(ports: CardsPorts): CardsModel {
  const { kit, measure, desk, sharing, print, soon } = ports;
  const setting = computed<CardSetting>(() => {
    const { lead, tipUnit } = desk.preferences.value;
    const known = knownAlongShot(measure.knowledge.value, LEVEL_BED, null);
    const { markedRadii } = tipScale(tipUnit, known.kit);
    return {
      ...known,
      tableLengthM: kit.current.tables.value.lengthM,
      tipDiameterM: kit.current.cues.value.tipDiameterM,
      sides: MARKS.map((mark) => mark * markedRadii),
      lead,
    };
  });
  const figures = signal<CardFigures | null>(null);
  const chosen = signal<CardUnit | null>(null);
  // What a browser refused once is tried another way by the next tap.
  let way: ShareWay = 'sheet';
  return {
    figures,
    watch: () =>
      effect(() => {
        figures.value = null;
        const steps = workOutCard(setting.value);
        if (!measure.isSettled.value) return;
        let stop = () => {};
        const step = () => {
          const { done, value } = steps.next();
          if (value) figures.value = value;
          else if (!done) stop = soon(step);
        };
        stop = soon(step);
        return () => stop();
      }),
    parts: signal<ReadonlySet<CardPart>>(new Set(CARD_PARTS.filter((part) => part !== 'player'))),
    unit: computed(() => {
      const { lead, lengthUnit } = desk.preferences.value;
      return chosen.value ?? (lead === 'object-ball' ? 'balls' : lengthUnit);
    }),
    setUnit(unit) {
      chosen.value = unit;
    },
    print,
    async save(name, png) {
      const outcome = await shareFile({ name, mediaType: 'image/png', bytes: png }, sharing, way);
      way = outcome.kind === 'again' ? outcome.way : 'sheet';
      return outcome;
    },
  };
}
