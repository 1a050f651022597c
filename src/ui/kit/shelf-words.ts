import { SWERVE_OVER_M } from '../../state/kit-effects';
import type { Named, ShelfName } from '../../store/records';
import { degreesOf } from '../../units/angle-degrees';
import { roughDistance } from '../../units/rough-distance';
import type { LaterModels } from '../app-models';

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
export function effectWords(
  shelf: ShelfName,
  { effects: { value: effects }, desk, kit }: LaterModels<'kit' | 'effects' | 'desk'>,
): string {
  switch (shelf) {
    case 'cues':
      return `Deflection: the cue ball squirts about ${inDegrees(effects.squirtRad)} at half a radius of side.`;
    case 'cloths':
      return effects.swerveRad === null
        ? ''
        : `Swerve: about ${inDegrees(effects.swerveRad)} on a soft ${softShot({ desk, kit })} with side, the cue raised 5°.`;
    case 'balls':
      return effects.throwRad === null
        ? ''
        : `Throw: about ${inDegrees(effects.throwRad)} on a soft half-ball hit without side.`;
    case 'tables':
      return 'Its length gives diamonds and table lengths; its slope bends slow shots.';
  }
}

function softShot({ desk, kit }: LaterModels<'kit' | 'desk'>): string {
  const { distanceUnit } = desk.preferences.value;
  return roughDistance(SWERVE_OVER_M, distanceUnit, kit.current.tables.value.lengthM);
}

function inDegrees(angleRad: number): string {
  return `${degreesOf(angleRad).toFixed(1)}°`;
}
