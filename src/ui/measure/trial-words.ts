import type { FitQuantity, PlayerQuantity } from '../../engine/fit/fit-question';
import type { TrialShot } from '../../engine/fit/trials/trials';
import type { KitQuantity } from '../../engine/kit/kit-spread';
import type { LengthUnit } from '../../units/unit-names';
import { QUANTITY_WORDS } from '../../words/quantity-words';
import { FACES } from './trials/faces';

const PLAYER_NAMES: { readonly [Q in PlayerQuantity]: string } = {
  aimBias: 'a steady error of your aim',
  soft: 'how hard your soft is',
  medium: 'how hard your medium is',
  firm: 'how hard your firm is',
};

/** A quantity as the end of a sentence: "your cue’s squirt". */
export function quantityName(quantity: FitQuantity): string {
  return isOfKit(quantity) ? QUANTITY_WORDS[quantity].yours : PLAYER_NAMES[quantity];
}

function isOfKit(quantity: FitQuantity): quantity is KitQuantity {
  return quantity in QUANTITY_WORDS;
}

/** A shot of a trial in a few words: "Line, right side, firm". */
export function shotName(shot: TrialShot, unit: LengthUnit): string {
  const { label, details } = FACES[shot.trial];
  return [label, ...details(shot, unit)].join(', ');
}
