import type { ReadingReport } from '../../engine/fit/shot-report';
import type { ReadingName } from '../../engine/fit/trials/trial';
import type { Attempt } from '../../store/attempt';
import type { Models } from '../app-models';
import { ResidualBar, residualWords } from './ResidualBar';
import { READING_LABELS, type ReadingFigure, readingFigure } from './reading-words';
import { WayWord } from './WayWord';

interface Props {
  readonly app: Models<'desk'>;
  readonly attempt: Attempt;
  /** What there is to put beside what was read. */
  readonly beside: readonly ReadingReport[];
  readonly isDoubtful: boolean;
  /** Says by what that is expected. */
  readonly expectedWord: string;
}

/** What was read of an attempt, each beside what is expected of it. */
export function ReadingRows({ app, attempt, beside, isDoubtful, expectedWord }: Props) {
  const preferences = app.desk.preferences.value;
  const names = Object.keys(attempt.readings) as ReadingName[];
  return (
    <dl class="reading-rows">
      {names.map((name) => {
        const read = attempt.readings[name];
        const expected = beside.find((reading) => reading.name === name) ?? null;
        if (read === undefined) return null;
        return (
          <div key={name}>
            <dt>{READING_LABELS[name]}</dt>
            <dd>
              <b>
                <Figure figure={readingFigure(name, read, preferences)} />
              </b>
              {expected && expected.expected !== null && (
                <span class="reading-expected">
                  {' '}
                  {expectedWord}{' '}
                  <Figure figure={readingFigure(name, expected.expected, preferences)} />
                  <span class="visually-hidden">, {residualWords(expected)}</span>
                </span>
              )}
            </dd>
            {expected && <ResidualBar reading={expected} isDoubtful={isDoubtful} />}
          </div>
        );
      })}
    </dl>
  );
}

function Figure({ figure }: { figure: ReadingFigure }) {
  return (
    <span class="reading-line">
      {figure.figure} <WayWord word={figure.way} />
    </span>
  );
}
