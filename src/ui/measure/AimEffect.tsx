import type { KitKnowledge } from '../../engine/fit/kit-knowledge';
import type { LaterModels } from '../app-models';
import { ENOUGH_NOTE, gainWords, toGoWords } from './gain-words';

interface Props {
  readonly app: LaterModels<'measure' | 'kit' | 'desk'>;
  readonly earlier: KitKnowledge;
  /** How many shots were left before it; left out where that is not known. */
  readonly before: number | null | undefined;
}

/** What an attempt did to the aim of the shot on Shot, and how much is left to do. */
export function AimEffect({ app, earlier, before }: Props) {
  const { measure, kit, desk } = app;
  const gain = measure.aimGain(earlier);
  const toGo = measure.toGo.value;
  if (gain === null) return null;
  const { lengthUnit } = desk.preferences.value;
  const words = gainWords(gain, lengthUnit, kit.current.tables.value.lengthM);
  return (
    <section class="aim-effect" aria-labelledby="aim-effect">
      <h2 id="aim-effect">Your aim on Shot</h2>
      <p class="aim-effect-shift">{words.shift}</p>
      <p>
        {words.sureness}; {words.enough}.
      </p>
      <b>{toGo && toGoWords(toGo, before)}</b>
      <p class="place-note">{ENOUGH_NOTE}</p>
    </section>
  );
}
