import type { RankedWay } from '../../engine/plan/ranked-way';
import { roughDistance } from '../../units/rough-distance';
import type { Models } from '../app-models';
import { easeWords, tellingOf } from '../chance-telling';
import { forWords } from '../player/player-words';
import { differenceLine, easeBeside } from './chance-words';
import { rowLine, sharedLine, sharedReason } from './list-words';
import { tenthsWords } from './pocket-words';
import { leadLabel, leadShare, wayName } from './way-words';

interface Props {
  readonly app: Models<'choose' | 'player' | 'desk'>;
  readonly ways: readonly RankedWay[];
  /** Told which row is left. */
  onLook(key: string): void;
}

/** The ways that are really different, the best first; what they have in common is said once. */
export function WayList({ app, ways, onLook }: Props) {
  const [first] = ways;
  if (first === undefined) return null;
  const shared = sharedReason(ways);
  const telling = tellingOf(app);
  const isEase = telling === 'ease';
  const { difference } = app.choose.comparison.value;
  const whom = forWords(app.player.inPlay.value);
  const { distanceUnit } = app.desk.preferences.value;
  const sizeWords = (lengthM: number) =>
    roughDistance(lengthM, distanceUnit, app.choose.shape.value.lengthM);
  return (
    <section class="way-section" aria-labelledby="way-order">
      {difference && <p class="way-difference">{differenceLine(difference, ways, whom)}</p>}
      <ol class="way-list">
        {ways.map((ranked) => (
          <li key={ranked.option.place}>
            <button
              type="button"
              class="way-row"
              data-way={ranked.option.place}
              onClick={() => {
                onLook(`${ranked.option.place}`);
                app.choose.choose(ranked);
              }}
            >
              <span class="way-lead">
                <b class="way-chance">
                  {isEase
                    ? easeBeside(leadShare(ranked), leadShare(first))
                    : tenthsWords(leadShare(ranked), telling)}
                </b>
                <span class="way-label">
                  {isEase ? easeWords(leadShare(ranked)) : leadLabel(ranked, telling)}
                </span>
              </span>
              <span class="way-name">{wayName(ranked)}</span>
              <span class="way-reason">{rowLine(ranked, shared, telling, sizeWords)}</span>
            </button>
          </li>
        ))}
      </ol>
      {shared !== null && <p class="way-reason">{sharedLine(ways, shared)}</p>}
    </section>
  );
}
