import type { FitReport } from '../../engine/fit/fit-report';
import type { Kit } from '../../engine/kit/kit';
import { numberIn, withNumber } from '../../engine/kit/kit-numbers';
import {
  type KitQuantity,
  QUANTITIES,
  QUANTITIES_OF,
  quantityIn,
} from '../../engine/kit/kit-spread';
import { PART_OF } from '../../store/kit-fields';
import type { Named, ShelfName } from '../../store/records';
import { partName } from './parts-played';
import { MEASURED_SHARE } from './sureness';

/**
 * A kit with what readings told of one of its records, which may be out of play: those of the kit in
 * play tell of every record that shared a shot with a part of it.
 *
 * @param kit by the records' own numbers
 * @returns null where the report says nothing of the record, or nothing that was not assumed
 */
export function kitAsMeasured(
  kit: Kit,
  shelf: ShelfName,
  { id, changes }: Named,
  report: FitReport | null,
): Kit | null {
  const part = PART_OF[shelf];
  const owner = partName(id, changes.length);
  const own = (report?.estimates ?? []).filter((one) => one.part === part && one.owner === owner);
  if (!own.some(({ sd, sdBefore }) => sd < MEASURED_SHARE * sdBefore)) return null;
  return QUANTITIES_OF[part].reduce((known, quantity) => {
    const estimate = own.find((one) => one.quantity === quantity);
    return estimate ? withQuantity(known, quantity, estimate.value) : known;
  }, kit);
}

/** A kit with a quantity of this value: of a curve, all its numbers are scaled alike. */
function withQuantity(kit: Kit, quantity: KitQuantity, value: number): Kit {
  const { numbers } = QUANTITIES[quantity];
  const scale = value / quantityIn(kit, quantity);
  return numbers.reduce(
    (known, one) => withNumber(known, one, numbers.length > 1 ? scale * numberIn(kit, one) : value),
    kit,
  );
}
