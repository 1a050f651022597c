import type { Signal } from '@preact/signals';
import type { FewWays } from '../../../state/choose/all-ways/fold-ways';
import { figureOf, type ListOrder } from '../../../state/choose/all-ways/list-order';
import {
  isSafety,
  type ShownPot,
  type ShownSafety,
  type ShownWay,
  struckAs,
} from '../../../state/choose/all-ways/shown-way';
import type { Models } from '../../app-models';
import { easeWords, type Telling, tellingOf } from '../../chance-telling';
import { easeBeside } from '../chance-words';
import { capitalised } from '../table-words';
import { outcomeWords, scratchOfThese, scratchWords, wayName } from '../way-words';
import { countWords, fallWords, safetyWords, wayKind } from './kind-words';
import { roughStops } from './safety-stops';
import { WayPicture } from './WayPicture';
import { isByLuck, partsLine, partWords, worthBeside } from './worth-words';

interface Props {
  readonly app: Models<'choose' | 'player'>;
  readonly few: FewWays;
  /** The kinds of which all are listed. */
  readonly opened: Signal<readonly string[]>;
  readonly isTurned: boolean;
  /** Told which row is left. */
  onLook(key: string): void;
}

/** Ways of every kind: what each is worth, what it does and how, and each ball's path. */
export function AllWayList({ app, few, opened, isTurned, onLook }: Props) {
  const { rows, folded } = few;
  if (rows.length === 0) return null;
  const { order, search } = app.choose.all;
  const all = search.value.ways;
  const best = search.value.state === 'done' ? bestOf(all, order.value) : null;
  const row = (way: ShownWay) => (
    <li key={way.key}>
      <button
        type="button"
        class="way-row all-way-row"
        data-way={way.key}
        onClick={() => {
          onLook(way.key);
          app.choose.all.choose(way);
        }}
      >
        <RowWords app={app} way={way} best={best} />
        <WayPicture choose={app.choose} way={way} isTurned={isTurned} />
      </button>
    </li>
  );
  return (
    <ol class="way-list">
      {rows.map(row)}
      {[...folded].map(([kind, ways]) => {
        const isOpen = opened.value.includes(kind);
        const toggle = () => {
          const others = opened.peek().filter((other) => other !== kind);
          opened.value = isOpen ? others : [...others, kind];
        };
        return [
          <li key={kind}>
            <button type="button" class="way-row way-fold" aria-expanded={isOpen} onClick={toggle}>
              {countWords(ways.length, kind, ' more')}: far behind, or much like one above
            </button>
          </li>,
          ...(isOpen ? ways.map(row) : []),
        ];
      })}
    </ol>
  );
}

/** The most that any row is worth, and how often the likeliest goes. */
interface Best {
  readonly worth: number;
  readonly goes: number;
}

function bestOf(rows: readonly ShownWay[], order: ListOrder): Best {
  return {
    worth: Math.max(...rows.map(({ told }) => told.worth.worth)),
    goes: Math.max(...rows.map((way) => figureOf(way, order))),
  };
}

interface RowProps<W extends ShownWay> {
  readonly app: Models<'choose' | 'player'>;
  readonly way: W;
  /** Null while it is not known. */
  readonly best: Best | null;
}

function RowWords({ app, way, best }: RowProps<ShownWay>) {
  return (
    <>
      <span class="way-lead">
        <Lead app={app} way={way} best={best} />
      </span>{' '}
      {isSafety(way) ? <SafetyWords app={app} way={way} /> : <PotWords app={app} way={way} />}{' '}
      <span class="way-parts">
        {partsLine(way.told, tellingOf(app), app.choose.all.order.value)}
      </span>
    </>
  );
}

/** What the list is ordered by; of a safety always its worth. */
function Lead({ app, way, best }: RowProps<ShownWay>) {
  const telling = tellingOf(app);
  const isEase = telling === 'ease';
  const order = isSafety(way) ? 'worth' : app.choose.all.order.value;
  const isByWorth = order === 'worth';
  // Until all are there, how easy the pot is has to do.
  if (isEase && best === null && isSafety(way)) return null;
  const share = isEase && best === null ? way.told.worth.goes : figureOf(way, order);
  const beside =
    best && (isByWorth ? worthBeside(share, best.worth) : easeBeside(share, best.goes));
  const ease = best && !isByWorth ? easeWords(share) : 'for most';
  return (
    <>
      <b class="way-chance">{isEase && beside ? beside : partWords(share, telling)}</b>{' '}
      <span class="way-label">{isEase ? ease : LABELS[order]}</span>
    </>
  );
}

const LABELS: Readonly<Record<ListOrder, string>> = {
  worth: 'worth',
  goes: 'goes',
  zone: 'goes and in the zone',
};

type WordsProps<W extends ShownWay> = Omit<RowProps<W>, 'best'>;

/** By worth, how often the pot alone goes is one of its parts. */
function PotWords({ app, way: { told } }: WordsProps<ShownPot>) {
  const telling = tellingOf(app);
  return (
    <>
      <span class="way-name">
        {fallWords(told.goal).replace(/ pocket$/, '')},{' '}
        <span class="way-kind">{wayKind(told)}.</span>
      </span>{' '}
      <span class="way-reason">
        {capitalised([wayName(told), ...riskLine(told, telling, app)].join(', '))}
      </span>
    </>
  );
}

/** What the figure at the head leaves out. */
function riskLine(
  told: ShownPot['told'],
  telling: Telling,
  { choose }: Models<'choose'>,
): readonly string[] {
  const order = choose.all.order.value;
  const luck = isByLuck(told) ? ['mostly by luck'] : [];
  if (order === 'zone') return [...outcomeWords(told, telling), ...luck];
  const ofThese = order === 'goes' ? scratchOfThese(told, telling).replace(/^, /, '') : '';
  return [...(ofThese === '' ? [] : [ofThese]), ...scratchWords(told, telling), ...luck];
}

function SafetyWords({ app: { choose }, way }: WordsProps<ShownSafety>) {
  const stops = roughStops(way, choose.open.value.balls, choose.shape.value);
  return (
    <>
      <span class="way-name">
        Safety, <span class="way-kind">{safetyWords(way.told.goal)}.</span>
      </span>{' '}
      <span class="way-reason">{capitalised(`${wayName(struckAs(way.told))}; ${stops}`)}</span>
    </>
  );
}
