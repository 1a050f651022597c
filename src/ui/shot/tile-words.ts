import type { Shot } from '../../engine/direct/shot';
import type { ShotModel } from '../../state/shot-model';
import { directionWord } from '../../units/direction-word';
import { elevationWord } from '../../units/elevation-word';
import { formatNumber, formatQuantity, symbolFor } from '../../units/format-number';
import { sideName } from '../../units/side-name';
import { speedWord } from '../../units/speed-word';
import { TIP_CONTACT } from '../../units/tip-contact';

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

/** What a tile says: "1.15", "m", "to the ghost ball". */
export interface TileWords {
  readonly figure: string;
  readonly symbol: string;
  readonly word: string;
}

/** Reads one input as its tile shows it. */
export function tileWords(
  name: InputName,
  model: ShotModel,
  distanceFrom: 'ghost-ball' | 'ball-to-ball',
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
      return tipWords(shot);
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

function tipWords({ side, height, cutRad }: Shot): TileWords {
  const across = radii(side);
  const up = radii(height);
  const upWord = height > 0 ? '↑ high' : '↓ low';
  if (across === '0' && up === '0') return { figure: 'Centre', symbol: '', word: 'no side' };
  if (across === '0') return { figure: up, symbol: 'R', word: upWord };
  const spin = sideName(side, cutRad);
  const name = spin === 'inside' || spin === 'outside' ? `, ${spin}` : '';
  const also = up === '0' ? '' : `, ${up} R ${upWord}`;
  return { figure: across, symbol: 'R', word: `${arrowed(directionWord(side), '')}${name}${also}` };
}

function radii(fraction: number): string {
  return formatNumber(Math.abs(fraction), TIP_CONTACT);
}

function arrowed(side: 'left' | 'right' | 'none', neither: string): string {
  if (side === 'none') return neither;
  return side === 'left' ? '← left' : '→ right';
}
