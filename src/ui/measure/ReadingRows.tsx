import type { ShotReport } from '../../engine/fit/shot-report';
import type { ReadingName } from '../../engine/fit/trial-shot';
import type { Attempt } from '../../store/attempt';
import type { AppModels } from '../app-models';
import { ResidualBar, residualWords } from './ResidualBar';
import { READING_LABELS, type ReadingFigure, readingFigure } from './reading-words';
import { WayWord } from './WayWord';

interface Props {
  readonly app: AppModels;
  readonly attempt: Attempt;
  /** What the fit says of it; null where it was not fitted. */
  readonly report: ShotReport | null;
}

/** What was read of an attempt, each beside what was expected of it. */
export function ReadingRows({ app, attempt, report }: Props) {
  const preferences = app.desk.preferences.value;
  const names = Object.keys(attempt.readings) as ReadingName[];
  return (
    <dl class="reading-rows">
      {names.map((name) => {
        const read = attempt.readings[name];
        const beside = report?.readings.find((reading) => reading.name === name) ?? null;
        if (read === undefined) return null;
        return (
          <div key={name}>
            <dt>{READING_LABELS[name]}</dt>
            <dd>
              <b>
                <Figure figure={readingFigure(name, read, preferences)} />
              </b>
              {beside && beside.expected !== null && (
                <span class="reading-expected">
                  {' '}
                  expected <Figure figure={readingFigure(name, beside.expected, preferences)} />
                  <span class="visually-hidden">, {residualWords(beside)}</span>
                </span>
              )}
            </dd>
            {beside && <ResidualBar reading={beside} isDoubtful={report?.isDoubtful ?? false} />}
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
