import type { Signal } from '@preact/signals';
import type { FewWays } from '../../../state/choose/all-ways/fold-ways';
import { type ListOrder, orderedShare } from '../../../state/choose/all-ways/list-order';
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
import { tenthsWords } from '../pocket-words';
import { capitalised } from '../table-words';
import { leadLabel, outcomeWords, scratchOfThese, scratchWords, wayName } from '../way-words';
import { fallWords, foldWords, safetyWords, wayKind } from './kind-words';
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
  const order = app.choose.all.order.value;
  const all = [...rows, ...folded.flatMap(({ ways }) => ways)];
  const best = app.choose.all.search.value.state === 'done' ? bestOf(all, order) : null;
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
      {folded.map((fold) => {
        const isOpen = opened.value.includes(fold.kind);
        return [
          <li key={fold.kind}>
            <button
              type="button"
              class="way-row way-fold"
              aria-expanded={isOpen}
              onClick={() => {
                const others = opened.peek().filter((kind) => kind !== fold.kind);
                opened.value = isOpen ? others : [...others, fold.kind];
              }}
            >
              {foldWords(fold, order)}
            </button>
          </li>,
          ...(isOpen ? fold.ways.map(row) : []),
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
    goes: Math.max(...rows.map((way) => (isSafety(way) ? 0 : orderedShare(way, order)))),
  };
}

interface RowProps<W extends ShownWay> {
  readonly app: Models<'choose' | 'player'>;
  readonly way: W;
  /** Null while it is not known. */
  readonly best: Best | null;
}

function RowWords({ app, way, best }: RowProps<ShownWay>) {
  const order = app.choose.all.order.value;
  const isByWorth = order === 'worth' || isSafety(way);
  return (
    <>
      <span class="way-lead">
        {isByWorth ? (
          <LeadWorth app={app} way={way} best={best} />
        ) : (
          <LeadGoes app={app} way={way} best={best} />
        )}
      </span>{' '}
      {isSafety(way) ? <SafetyWords app={app} way={way} /> : <PotWords app={app} way={way} />}{' '}
      <span class="way-parts">{partsLine(way.told, tellingOf(app), order)}</span>
    </>
  );
}

function LeadWorth({ app, way: { told }, best }: RowProps<ShownWay>) {
  const telling = tellingOf(app);
  const { worth } = told.worth;
  // Until all are there, how easy the pot is has to do.
  if (telling === 'ease' && best === null && 'struck' in told) return null;
  const share = telling === 'ease' ? told.worth.goes : worth;
  return (
    <>
      <b class="way-chance">
        {telling === 'ease' && best ? worthBeside(worth, best.worth) : partWords(share, telling)}
      </b>{' '}
      <span class="way-label">{telling === 'ease' ? 'for most' : 'worth'}</span>
    </>
  );
}

function LeadGoes({ app, way, best }: RowProps<ShownPot>) {
  const telling = tellingOf(app);
  const order = app.choose.all.order.value;
  const share = orderedShare(way, order);
  const label = telling === 'ease' ? 'for most' : 'goes';
  const isBeside = telling === 'ease' && best !== null;
  return (
    <>
      <b class="way-chance">
        {isBeside ? easeBeside(share, best.goes) : tenthsWords(share, telling)}
      </b>{' '}
      <span class="way-label">
        {isBeside ? easeWords(share) : order === 'zone' ? leadLabel(way.told, telling) : label}
      </span>
    </>
  );
}

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
        {isByLuck(told) && <b>, mostly by luck</b>}
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
  if (order === 'zone') return outcomeWords(told, telling);
  const ofThese = order === 'goes' ? scratchOfThese(told, telling).replace(/^, /, '') : '';
  return [...(ofThese === '' ? [] : [ofThese]), ...scratchWords(told, telling)];
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
