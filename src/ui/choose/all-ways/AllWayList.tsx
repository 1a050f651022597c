import type { ShownWay } from '../../../state/choose/all-ways/look-for-ways';
import type { Models } from '../../app-models';
import { tellingOf } from '../../chance-telling';
import { shareWords } from '../chance-words';
import { capitalised } from '../table-words';
import { leadLabel, leadShare, outcomeWords, wayName } from '../way-words';
import { fallWords, kindWords } from './kind-words';
import { WayPicture } from './WayPicture';

interface Props {
  readonly app: Models<'choose' | 'player'>;
  readonly rows: readonly ShownWay[];
  readonly isTurned: boolean;
  /** Told which row is left. */
  onLook(key: string): void;
}

/** Ways of every kind: how often, what falls where and how, how it is struck, and each ball's path. */
export function AllWayList({ app, rows, isTurned, onLook }: Props) {
  if (rows.length === 0) return null;
  return (
    <ol class="way-list">
      {rows.map((way) => (
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
            <RowWords app={app} way={way} />
            <WayPicture choose={app.choose} way={way} isTurned={isTurned} />
          </button>
        </li>
      ))}
    </ol>
  );
}

function RowWords({ app, way: { told } }: Pick<Props, 'app'> & { readonly way: ShownWay }) {
  const telling = tellingOf(app);
  const { goal, doubleKiss } = told;
  const played = [wayName(told), ...outcomeWords(told, telling)].join(', ');
  return (
    <>
      <span class="way-lead">
        <b class="way-chance">{shareWords(leadShare(told), telling)}</b>{' '}
        <span class="way-label">{leadLabel(told, telling)}</span>
      </span>{' '}
      <span class="way-name">
        {fallWords(goal).replace(/ pocket$/, '')},{' '}
        <span class="way-kind">{kindWords(goal, doubleKiss)}</span>.
      </span>{' '}
      <span class="way-reason">{capitalised(played)}</span>
    </>
  );
}
