import type { KitEffects } from '../../state/kit-effects';
import type { Named, ShelfName } from '../../store/records';
import { degreesOf } from '../../units/angle-degrees';

/** In the order they are shown. */
export const SHELVES: readonly ShelfName[] = ['cues', 'cloths', 'balls', 'tables'];

export const SHELF_LABELS: Readonly<Record<ShelfName, string>> = {
  cues: 'Cue',
  cloths: 'Cloth',
  balls: 'Balls',
  tables: 'Table',
};

/** Where a record's numbers come from. */
export function originWords({ origin }: Pick<Named, 'origin'>): string {
  return origin === 'invented' ? 'an invented example' : 'yours, by hand';
}

/** What the kit in play does, told where the numbers that do it are kept. */
export function effectWords(shelf: ShelfName, effects: KitEffects): string {
  switch (shelf) {
    case 'cues':
      return `Deflection: the cue ball squirts about ${inDegrees(effects.squirtRad)} at half a radius of side.`;
    case 'cloths':
      return effects.swerveRad === null
        ? ''
        : `Swerve: about ${inDegrees(effects.swerveRad)} on a soft metre with side, the cue raised 5°.`;
    case 'balls':
      return effects.throwRad === null
        ? ''
        : `Throw: about ${inDegrees(effects.throwRad)} on a soft half-ball hit without side.`;
    case 'tables':
      return 'Its length gives diamonds and table lengths; its slope bends slow shots.';
  }
}

function inDegrees(angleRad: number): string {
  return `${degreesOf(angleRad).toFixed(1)}°`;
}
