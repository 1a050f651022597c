import type { RankedWay } from '../../engine/options/ranked-way';
import type { AppModels } from '../app-models';
import { percentWords } from './table-words';
import { wayLine, wayName } from './way-words';

/** The ways that are really different, from the easiest to the hardest. */
export function WayList({ app, ways }: { app: AppModels; ways: readonly RankedWay[] }) {
  if (ways.length === 0) return null;
  return (
    <ol class="way-list" aria-label="Ways to play it, the easiest first">
      {ways.map((ranked) => (
        <li key={ranked.option.place}>
          <button
            type="button"
            class="way-row"
            data-way={ranked.option.place}
            onClick={() => app.choose.choose(ranked)}
          >
            <b class="way-chance">{percentWords(ranked.chance)}</b>
            <span class="way-name">{wayName(ranked.way)}</span>
            <span class="way-reason">{wayLine(ranked)}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}
