import { directCut } from '../../engine/goal/goal';
import type { Shared, SharedKit } from '../../store/links/shared';
import { SHELF_NAMES, type ShelfName } from '../../store/records';
import type { ChooseModel } from '../choose/choose-model';
import type { DeskModel } from '../desk-model';
import type { KitModel } from '../kit-model';
import { recordAsTold } from '../kit-telling';
import type { MeasureModel } from '../measure/measure-model';

/** What can be shared. */
export interface SharedFrom {
  readonly desk: Pick<DeskModel, 'shot' | 'pocket'>;
  readonly choose: Pick<ChooseModel, 'open' | 'saved' | 'drills' | 'wayToAsk' | 'wayToKeep'>;
  readonly kit: KitModel;
  readonly measure: Pick<MeasureModel, 'knowledge' | 'measured' | 'report' | 'shotsReadOn'>;
}

const NOTHING: Shared = { shot: null, position: null, kit: {} };

/** What is shared under a name (see `LinksModel`), as it is now; null where there is none. */
export function sharedOf(from: SharedFrom, what: string): Shared | null {
  const { desk, choose } = from;
  const [head = '', id] = what.split('/');
  if (head === 'shot') {
    return { ...NOTHING, shot: { shot: desk.shot.value, pocket: desk.pocket.value } };
  }
  if (head === 'kit') return { ...NOTHING, kit: kitToShare(from) };
  if (head === 'way') return sharedWay(choose);
  if (head === 'position') {
    const position = id
      ? [choose.saved, choose.drills].flatMap((all) => all.value).find((one) => one.id === id)
      : choose.open.value;
    return position ? { ...NOTHING, position } : null;
  }
  const shelf = SHELF_NAMES.find((name) => name === head);
  return shelf && id ? sharedRecord(from, shelf, id) : null;
}

/** A direct cut is Shot's to tell, and older apps know that; any other way goes as it is laid. */
function sharedWay({ open, wayToAsk, wayToKeep }: SharedFrom['choose']): Shared | null {
  const way = wayToAsk.value;
  const laid = wayToKeep.value;
  if (way === null) {
    const { zone } = open.value;
    return laid && { ...NOTHING, position: { ...open.value, ...laid, zone } };
  }
  const { asked, of } = way;
  return {
    ...NOTHING,
    shot: asked,
    position: { ...open.value, goal: directCut(of.ball, of.pocket) },
  };
}

function sharedRecord<S extends ShelfName>(from: SharedFrom, shelf: S, id: string): Shared | null {
  const record = from.kit.find(shelf, id);
  return record && { ...NOTHING, kit: { [shelf]: recordAsTold(from, shelf, record) } };
}

/** All that is in play, as measured where it was. */
export function kitToShare(from: Pick<SharedFrom, 'kit' | 'measure'>): SharedKit {
  const { current } = from.kit;
  return Object.fromEntries(
    SHELF_NAMES.map((shelf) => [shelf, recordAsTold(from, shelf, current[shelf].value)]),
  );
}
