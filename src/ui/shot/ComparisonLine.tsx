import type { Comparison } from '../../state/shot-comparison';
import type { Preferences } from '../../store/records';
import { refusalWords } from '../../words/refusal-words';
import type { Models } from '../app-models';
import { lengthReading, type Reading } from './answer-words';
import { ReadingLine } from './ReadingLine';
import './ComparisonLine.css';

/** The shot set aside, beside the present one; a tap exchanges the two. */
export function ComparisonLine({ app }: { app: Models<'shot' | 'measure' | 'desk'> }) {
  const comparison = app.shot.comparison.value;
  if (!comparison) return null;
  const preferences = app.desk.preferences.value;
  return (
    <button
      type="button"
      class={
        app.measure.isSettled.value ? 'button comparison-line' : 'button comparison-line is-stale'
      }
      onClick={() => app.shot.swap()}
    >
      <span aria-hidden="true">⇄</span>
      <HeldWords comparison={comparison} preferences={preferences} />
    </button>
  );
}

interface WordsProps {
  readonly comparison: Comparison;
  readonly preferences: Preferences;
}

function HeldWords({ comparison, preferences }: WordsProps) {
  const { result, change } = comparison;
  if (!result.ok) return <span>Held: {refusalWords(result).message}</span>;
  const { lengthUnit, lead } = preferences;
  const onFace = lead === 'object-ball';
  const heldM = onFace ? result.aimOnObjectBallM : result.aimOffsetM;
  const changeM = onFace ? change?.onObjectBallM : change?.offsetM;
  return (
    <span>
      Held <ReadingLine reading={lengthReading(heldM, lengthUnit, '')} />
      {changeM !== undefined && (
        <>
          {'; this one '}
          <ChangeWords reading={lengthReading(changeM, lengthUnit, 'of it')} />
        </>
      )}
    </span>
  );
}

/** How far from the held aim the present one passes; a difference of nothing is no difference. */
function ChangeWords({ reading }: { reading: Reading }) {
  return reading.side === 'none' ? <b>the same</b> : <ReadingLine reading={reading} />;
}
