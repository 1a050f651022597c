import type { ShownWay } from '../../../state/choose/all-ways/look-for-ways';
import type { Models } from '../../app-models';
import { easeWords, tellingOf } from '../../chance-telling';
import { easeBeside } from '../chance-words';
import { tenthsWords } from '../pocket-words';
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
  const isAllThere = app.choose.all.search.value.state === 'done';
  const best = isAllThere ? Math.max(...rows.map(({ told }) => leadShare(told))) : null;
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
            <RowWords app={app} way={way} best={best} />
            <WayPicture choose={app.choose} way={way} isTurned={isTurned} />
          </button>
        </li>
      ))}
    </ol>
  );
}

interface RowProps {
  readonly app: Models<'player'>;
  readonly way: ShownWay;
  /** How often the likeliest goes; null while that is not known. */
  readonly best: number | null;
}

function RowWords({ app, way: { told }, best }: RowProps) {
  const telling = tellingOf(app);
  const share = leadShare(told);
  const isBeside = telling === 'ease' && best !== null;
  const { goal, doubleKiss } = told;
  const played = [wayName(told), ...outcomeWords(told, telling)].join(', ');
  return (
    <>
      <span class="way-lead">
        <b class="way-chance">{isBeside ? easeBeside(share, best) : tenthsWords(share, telling)}</b>{' '}
        <span class="way-label">{isBeside ? easeWords(share) : leadLabel(told, telling)}</span>
      </span>{' '}
      <span class="way-name">
        {fallWords(goal).replace(/ pocket$/, '')},{' '}
        <span class="way-kind">{kindWords(goal, doubleKiss)}.</span>
      </span>{' '}
      <span class="way-reason">{capitalised(played)}</span>
    </>
  );
}
