import type { MeantStroke, SpeedWord } from '../../engine/fit/trials/trial';
import type { TrialShot } from '../../engine/fit/trials/trials';
import { directionWord } from '../../units/direction-word';

/** A tip contact this far out, radii, is well out. */
const WELL_OUT = 0.4;

/** Where the tip goes: "tip well right of centre". */
export function tipWords({ side, height }: Pick<MeantStroke, 'side' | 'height'>): string {
  const across =
    side === 0 ? '' : `${Math.abs(side) > WELL_OUT ? 'well ' : ''}${directionWord(side)}`;
  const up =
    height === 0
      ? ''
      : `${Math.abs(height) > WELL_OUT ? 'well ' : ''}${height < 0 ? 'below' : 'above'}`;
  if (across === '' && up === '') return 'tip on the centre';
  if (up === '') return `tip ${across} of centre`;
  return across === '' ? `tip ${up} centre` : `tip ${across} of and ${up} centre`;
}

const YOURS: Readonly<Record<SpeedWord, string>> = {
  soft: 'your soft',
  medium: 'your medium',
  firm: 'your firm',
};

/** How hard, in the player's own word. */
export function speedName({ stroke }: TrialShot): string {
  return stroke.speedWord === null ? 'as fast as said' : YOURS[stroke.speedWord];
}
