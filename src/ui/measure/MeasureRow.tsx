import { MEASURE_SKETCH } from '../../diagram/kit-sketch';
import { agoWords } from '../../units/ago-words';
import type { LaterModels } from '../app-models';
import { PictureRow } from '../kit/PictureRow';
import { shotName } from './trial-words';

/** The way from Kit to measuring: what was left, or what would teach most. */
export function MeasureRow({ app }: { app: LaterModels<'measure' | 'nowMs' | 'desk' | 'router'> }) {
  const { measure, desk, nowMs } = app;
  const unit = desk.preferences.value.lengthUnit;
  const unfinished = measure.unfinished.value;
  const [best] = measure.offers.value;
  const done = measure.attempts.value.filter(({ now }) => now === null).length;
  return (
    <PictureRow app={app} panel="measure" sketch={MEASURE_SKETCH}>
      <b>Measure</b>{' '}
      <span class="shelf-effect">
        {done === 0
          ? 'Learn your cue, cloth and balls from shots read off the table.'
          : `${done} ${done === 1 ? 'attempt' : 'attempts'} taken down, the last ${lastWords(measure.lastReadAtMs.value, nowMs())}.`}
      </span>{' '}
      <span class="shelf-origin">
        {unfinished && `Unfinished: ${shotName(unfinished.attempt.shot, unit)}.`}
        {!unfinished && best && `Next: ${shotName(best.shot, unit)}.`}
      </span>
    </PictureRow>
  );
}

function lastWords(atMs: number | null, nowMs: number): string {
  return atMs === null ? 'long ago' : agoWords(nowMs - atMs);
}
