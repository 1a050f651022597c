import { useEffect } from 'preact/hooks';
import type { FieldName } from '../../state/shot-fields';
import { formatQuantity } from '../../units/format-number';
import type { LaterModels, WhyProps } from '../app-models';
import { lastInput } from './last-input';
import { INPUT_LABELS, type InputName } from './tile-words';
import { WarningList } from './WarningList';
import './CoachView.css';

/** What is stepped of each input. */
const STEPPED: Readonly<Record<InputName, FieldName>> = {
  distance: 'distance',
  cut: 'cut',
  pocket: 'pocket',
  speed: 'speed',
  tip: 'side',
  raised: 'elevation',
};

const KEYS: ReadonlyMap<string, 1 | -1> = new Map([
  ['ArrowLeft', -1],
  ['ArrowDown', -1],
  ['ArrowRight', 1],
  ['ArrowUp', 1],
]);

interface Props extends Pick<WhyProps, 'app'> {
  /** Keeps the screen lit; left out where it could not be loaded. */
  readonly awake?: LaterModels<'awake'>['awake'] | undefined;
}

/** For a shared screen: the picture and the headline, stepped by arrow keys or at the edges. */
export function CoachView({ app, awake }: Props) {
  const { shot, router } = app;
  const input = lastInput.value;
  const name = STEPPED[input];
  useEffect(() => {
    document.documentElement.dataset.coach = '';
    awake?.hold();
    return () => {
      delete document.documentElement.dataset.coach;
      awake?.release();
    };
  }, [awake]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const towards = KEYS.get(event.key);
      if (event.key === 'Escape') router.close();
      if (!towards) return;
      event.preventDefault();
      shot.nudge(name, towards);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [shot, router, name]);
  const { figure, facts } = shot.fields[name].value;
  const edge = (towards: 1 | -1, word: string, sign: string) => (
    <button
      type="button"
      class="coach-edge"
      aria-label={`${word}: ${INPUT_LABELS[input]}`}
      onClick={() => shot.nudge(name, towards)}
    >
      <span aria-hidden="true">{sign}</span>
    </button>
  );
  return (
    <section class="coach" aria-label="Coach’s view">
      <WarningList app={app} />
      {edge(-1, 'Less', '−')}
      <button type="button" class="button" onClick={() => router.close()}>
        <span aria-hidden="true">‹</span> Back
      </button>
      <output>
        {INPUT_LABELS[input]} {formatQuantity(figure, facts)}
      </output>
      {edge(1, 'More', '+')}
    </section>
  );
}
