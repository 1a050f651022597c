import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { foldWays } from '../../../state/choose/all-ways/fold-ways';
import { NO_SAFETY_WORDS, noWayWords } from '../../../words/no-way-words';
import type { Models } from '../../app-models';
import type { Board } from '../use-board';
import { useListPlace } from '../use-list-place';
import { AllWayList } from './AllWayList';
import { KindChips, listed } from './KindChips';
import { Looking } from './Looking';
import { OpenedWay } from './OpenedWay';
import { useSteadyRows } from './use-steady-rows';
import './AllWays.css';

interface Props {
  readonly app: Models<'shot' | 'choose' | 'player' | 'kit' | 'desk' | 'router' | 'cards'>;
  readonly board: Board;
}

/** Ways of every kind to play the position, or the one that was picked. */
export function AllWaysTools({ app, board }: Props) {
  const { all } = app.choose;
  useEffect(() => all.attend(), [all]);
  const way = all.chosen.value;
  const onLook = useListPlace(way !== null);
  const { ways, state, isStale } = all.search.value;
  const [filter, order] = [all.filter.value, all.order.value];
  const { rows, putInOrder } = useSteadyRows(ways, state === 'done');
  const opened = useSignal<readonly string[]>([]);
  if (way) return <OpenedWay app={app} way={way} />;
  if (all.isLaying.value) return <p role="status">Working out the way that came…</p>;
  const isWhole = state === 'done' && putInOrder === null;
  const shown = listed(rows, filter);
  const few = isWhole
    ? foldWays(shown, order, filter === 'all')
    : { rows: shown, folded: new Map() };
  return (
    <div class={isStale ? 'ways is-stale' : 'ways'}>
      <KindChips choose={app.choose} />
      <Looking app={app} putInOrder={putInOrder} />
      <AllWayList
        app={app}
        few={few}
        opened={opened}
        isTurned={board.map.value.isTurned}
        onLook={onLook}
      />
      <NoWays app={app} />
    </div>
  );
}

/** Why there is none of a kind, once all is looked at. */
function NoWays({ app }: Pick<Props, 'app'>) {
  const { all } = app.choose;
  const filter = all.filter.value;
  const { none, ways, state } = all.search.value;
  const told = none.filter(({ kind }) => filter === 'all' || filter === kind);
  const lines = new Set(told.map(noWayWords));
  if (state === 'done' && filter === 'safety' && listed(ways, filter).length === 0) {
    lines.add(NO_SAFETY_WORDS);
  }
  if (lines.size === 0) return null;
  return (
    <ul class="no-ways">
      {[...lines].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
