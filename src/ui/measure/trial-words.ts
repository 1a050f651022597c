import type { FitQuantity, PlayerQuantity } from '../../engine/fit/fit-question';
import type { TrialName, TrialShot } from '../../engine/fit/trials/trials';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import { DEGREES, degreesOf } from '../../units/angle-degrees';
import { directionWord } from '../../units/direction-word';
import { formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { LengthUnit } from '../../units/unit-names';
import { QUANTITY_WORDS } from '../../words/kit-words';

export const TRIAL_LABELS: Readonly<Record<TrialName, string>> = {
  line: 'Line',
  curve: 'Curve',
  stop: 'Stop',
  throw: 'Throw',
  coast: 'Coast',
  pivot: 'Pivot',
  speed: 'Speed',
};

/** What each trial is for, and what it takes. Times are our guess. */
export const TRIAL_FACTS: Readonly<
  Record<TrialName, { readonly teaches: string; readonly takes: string }>
> = {
  line: { teaches: 'how far your cue throws the ball off line', takes: '1 minute' },
  curve: { teaches: 'how the cloth bends a raised cue’s shot', takes: '2 minutes' },
  stop: { teaches: 'how the cloth takes draw away', takes: '2 minutes' },
  throw: { teaches: 'how the balls rub as they meet', takes: '2 minutes' },
  coast: { teaches: 'how fast the cloth is, and how the table lies', takes: '1 minute' },
  pivot: { teaches: 'your cue’s deflection, by feel alone', takes: '5 minutes' },
  speed: { teaches: 'how hard your own words are', takes: '1 minute' },
};

const PLAYER_NAMES: { readonly [Q in PlayerQuantity]: string } = {
  aimBias: 'a steady error of your aim',
  soft: 'how hard your soft is',
  medium: 'how hard your medium is',
  firm: 'how hard your firm is',
};

/** A quantity as the end of a sentence: "your cue’s deflection". */
export function quantityName(quantity: FitQuantity): string {
  return isOfKit(quantity) ? QUANTITY_WORDS[quantity].yours : PLAYER_NAMES[quantity];
}

function isOfKit(quantity: FitQuantity): quantity is KitQuantity {
  return quantity in QUANTITY_WORDS;
}

/** A shot of a trial in a few words: "Line, right side, firm". */
export function shotName(shot: TrialShot, unit: LengthUnit): string {
  return [TRIAL_LABELS[shot.trial], ...DETAILS[shot.trial](shot, unit)].join(', ');
}

type Details = (shot: TrialShot, unit: LengthUnit) => readonly string[];

const sided: Details = ({ stroke }) => [
  `${directionWord(stroke.side)} side${stroke.height < 0 ? ' and low' : ''}`,
  stroke.speedWord ?? '',
];

const DETAILS: Readonly<Record<TrialName, Details>> = {
  line: sided,
  pivot: sided,
  curve: (shot, unit) => [
    ...sided(shot, unit),
    `butt up ${formatQuantity(degreesOf(shot.stroke.elevationRad), DEGREES)}`,
  ],
  stop: ({ stroke, setup }, unit) => [
    `${gapWords(setup.gapM, unit)} apart`,
    stroke.speedWord ?? '',
  ],
  throw: ({ stroke, setup }) => [
    setup.cutRad === 0
      ? `straight, ${directionWord(stroke.side)} side`
      : `cut to the ${directionWord(setup.cutRad)}`,
    stroke.speedWord ?? '',
  ],
  coast: ({ stroke }) => [Math.cos(stroke.headingRad) > 0 ? 'up the table' : 'back down the table'],
  speed: ({ stroke }) => [`your ${stroke.speedWord ?? 'medium'}`],
};

/** A gap between two balls, by the tape: "5 cm". */
export function gapWords(gapM: number, unit: LengthUnit): string {
  const tape = unit === 'in' ? 'in' : 'cm';
  return formatQuantity(lengthInUnit(gapM, tape), {
    ...LENGTH_UNITS[tape],
    leastDecimals: 0,
    decimals: 1,
  });
}

/** The same by eye, in ball widths: "1½ balls". */
export function ballsApart(gapM: number, ballRadiusM: number): string {
  const halves = Math.max(1, Math.round(gapM / ballRadiusM));
  if (halves === 1) return 'half a ball';
  if (halves === 2) return '1 ball';
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? '½' : ''} balls`;
}
