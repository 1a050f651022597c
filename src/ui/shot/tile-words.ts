import type { ShotModel } from '../../state/shot-model';
import type { Preferences } from '../../store/records';
import { directionWord } from '../../units/direction-word';
import { elevationWord } from '../../units/elevation-word';
import { formatNumber, formatQuantity, symbolFor } from '../../units/format-number';
import { speedWord } from '../../units/speed-word';
import { arrowed, type TileWords } from './tile-text';
import { tipWords } from './tip-words';

/** What is asked of a shot, by the name of its tile and panel. */
export type InputName = 'distance' | 'cut' | 'pocket' | 'speed' | 'tip' | 'raised';

export const INPUT_LABELS: Readonly<Record<InputName, string>> = {
  distance: 'Distance',
  cut: 'Cut',
  pocket: 'Pocket',
  speed: 'Speed',
  tip: 'Tip',
  raised: 'Cue raised',
};

/** Reads one input as its tile shows it. */
export function tileWords(
  name: InputName,
  model: ShotModel,
  { distanceFrom, tipUnit }: Pick<Preferences, 'distanceFrom' | 'tipUnit'>,
): TileWords {
  const shot = model.shot.value;
  switch (name) {
    case 'distance':
      return figureOf(
        model,
        'distance',
        distanceFrom === 'ghost-ball' ? 'to ghost' : 'ball to ball',
      );
    case 'cut':
      return figureOf(model, 'cut', arrowed(directionWord(shot.cutRad), 'straight'));
    case 'pocket':
      return figureOf(model, 'pocket', `mouth ${mouthWords(model)}`);
    case 'speed':
      return figureOf(model, 'speed', speedWord(shot.speedMps));
    case 'raised':
      return figureOf(model, 'elevation', elevationWord(shot.elevationRad));
    case 'tip':
      return tipWords(shot, tipUnit, model.tipScale.value);
  }
}

function figureOf(
  model: ShotModel,
  name: 'distance' | 'cut' | 'pocket' | 'speed' | 'elevation',
  word: string,
): TileWords {
  const { figure: value, facts } = model.fields[name].value;
  const figure = formatNumber(value, facts);
  return { figure, symbol: symbolFor(figure, facts), word };
}

function mouthWords({ fields }: ShotModel): string {
  const { figure, facts } = fields.mouth.value;
  return formatQuantity(figure, facts);
}
