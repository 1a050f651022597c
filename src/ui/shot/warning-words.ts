import type { ShotWarning } from '../../state/shot-warnings';
import { degreesOf } from '../../units/angle-degrees';
import { formatQuantity } from '../../units/format-number';
import { LENGTH_UNITS, lengthInUnit } from '../../units/length-unit';
import type { LengthUnit } from '../../units/unit-names';

/** One line for a warning. */
export function warningWords(warning: ShotWarning, lengthUnit: LengthUnit): string {
  switch (warning.kind) {
    case 'beyond-table':
      return 'Farther than from corner to corner of this table: check the distance and its unit.';
    case 'near-miscue':
      return 'Close to the miscue limit: chalk up, or strike nearer the centre.';
    case 'raised-cue':
      return 'A raised cue can tear the cloth or send a ball off the table: ask the room’s owner first.';
    case 'thin-cut':
      return 'Over 75° the cue ball only grazes: look for a fuller cut first.';
    case 'speed-sensitive': {
      const change = formatQuantity(
        lengthInUnit(warning.changeM, lengthUnit),
        LENGTH_UNITS[lengthUnit],
      );
      const angle = degreesOf(warning.changeRad).toFixed(1);
      return `Speed matters here: 5 % off moves the aim ${change} (${angle}°).`;
    }
    case 'speed-edge':
      return `On the edge: played 5 % ${warning.towards}, no aim does it.`;
    case 'swerve-leads':
      return 'Swerve outweighs squirt: speed and cloth decide.';
  }
}
