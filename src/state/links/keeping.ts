import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { writeLink } from '../../store/links/link-text';
import type { Shared, SharedShot } from '../../store/links/shared';
import { SHELF_NAMES, type ShelfName, type Shelves } from '../../store/records';
import { isSame } from '../../store/same-value';
import type { SavedPosition } from '../../store/saved-position';
import { freeCopyName } from '../../store/shelf-changes';
import type { ChooseModel } from '../choose/choose-model';
import { crowded } from '../crowded';
import type { DeskModel } from '../desk-model';
import type { KitShelves } from '../kit-shelves';
import { recordAsTold } from '../kit-telling';
import type { ShotModel } from '../shot-model';
import type { KeptOfLink, Wanted } from './links-model';
import type { SharedFrom } from './outgoing';

export interface KeepingPorts extends Pick<SharedFrom, 'kit' | 'measure'> {
  readonly desk: Pick<DeskModel, 'shot' | 'pocket' | 'choice' | 'choose'>;
  readonly choose: Pick<ChooseModel, 'saved' | 'shape' | 'bring' | 'remove'>;
  readonly shot: Pick<ShotModel, 'ask' | 'undo'>;
  readonly kept: Pick<KitShelves, 'put'>;
  readonly newId: () => string;
}

/** Keeps what a link brought beside what is here, and gives it back. */
export interface Keeping {
  /** False where there is no room, and nothing is kept: see {@link problem}. */
  keep(shared: Shared, wanted: Wanted): boolean;
  readonly kept: ReadonlySignal<KeptOfLink | null>;
  readonly problem: ReadonlySignal<string | null>;
  /** What has been changed since is the person's own, and stays. */
  undo(): void;
  /** From now on nothing can be given back. */
  forget(): void;
}

/** Takes back one of the things that were done. */
type GiveBack = () => void;

export function createKeeping(ports: KeepingPorts): Keeping {
  const { desk, choose, shot, kit, kept: shelves, newId } = ports;
  const kept = signal<KeptOfLink | null>(null);
  const problem = signal<string | null>(null);
  let done: GiveBack[] = [];

  /** The one that is here and is the very same in all that a link can say. */
  const hereAs = <S extends ShelfName>(shelf: S, record: Shelves[S]): Shelves[S] | undefined => {
    const said = (one: Shelves[S]) => writeLink({ kit: { [shelf]: one } });
    const here: readonly Shelves[S][] = kit.shelves[shelf].peek();
    return here.find((one) => said(recordAsTold(ports, shelf, one)) === said(record));
  };
  const add = <S extends ShelfName>(shelf: S, record: Shelves[S]): string => {
    const names = kit.shelves[shelf].peek().map(({ name }) => name);
    const row = { ...record, id: newId(), name: freeCopyName(record.name, names, 'shared') };
    shelves.put(shelf, row);
    done.push(() => {
      if (isSame(kit.find(shelf, row.id), row)) kit.remove(shelf, row.id);
    });
    return row.id;
  };
  const play = (shelf: ShelfName, id: string) => {
    const before = desk.choice.peek()[shelf];
    desk.choose(shelf, id);
    done.push(() => {
      if (desk.choice.peek()[shelf] === id) desk.choose(shelf, before);
    });
  };
  const keepRecord = (shelf: ShelfName, record: Shelves[ShelfName], isPlayed: boolean) => {
    const here = hereAs(shelf, record);
    const id = here?.id ?? add(shelf, record);
    if (isPlayed) play(shelf, id);
    return here ? [] : [{ shelf, id }];
  };
  const keepPosition = (given: SavedPosition): SavedPosition | null => {
    const brought = choose.bring(given);
    const find = () => choose.saved.peek().find(({ id }) => brought.ok && id === brought.id);
    const row = find() ?? null;
    done.push(() => {
      if (row && isSame(find(), row)) choose.remove(row.id);
    });
    return row;
  };
  const asked = () => ({ shot: desk.shot.peek(), pocket: desk.pocket.peek() });
  const keepShot = (given: SharedShot, position: SavedPosition | null) => {
    if (isSame(given, asked())) return;
    shot.ask(given, position && laidOn(position, choose.shape.peek()));
    const since = asked();
    done.push(() => {
      if (isSame(since, asked())) shot.undo();
    });
  };
  const doAll = (shared: Shared, wanted: Wanted) => {
    const isInPlay = wanted.kit && (wanted.shot || wanted.position);
    const added = SHELF_NAMES.flatMap((shelf) => {
      const record = wanted.kit && shared.kit[shelf];
      return record ? keepRecord(shelf, record, isInPlay) : [];
    });
    const position = wanted.position && shared.position ? keepPosition(shared.position) : null;
    if (wanted.shot && shared.shot) keepShot(shared.shot, position);
    const isLaid = Boolean(position && shared.position?.drill);
    kept.value = { ...wanted, added, isInPlay, isLaid };
  };
  const lists = [choose.saved, ...SHELF_NAMES.map((name) => kit.shelves[name])];
  const roomless = () =>
    lists.reduce<string | null>((found, list) => found ?? crowded(list.peek()), null);
  const forget = () => {
    done = [];
    kept.value = null;
    problem.value = null;
  };

  return {
    kept,
    problem,
    forget,
    keep(shared, wanted) {
      forget();
      if (wanted.kit || wanted.position) problem.value = roomless();
      if (problem.peek() === null) batch(() => doAll(shared, wanted));
      return problem.peek() === null;
    },
    undo: () =>
      batch(() => {
        for (const giveBack of done.reverse()) giveBack();
        forget();
      }),
  };
}

/** Which ball is played into which pocket, where the position lies as it was sent. */
function laidOn(
  { goal: { ball, pocket }, lengthM, widthM }: SavedPosition,
  shape: { readonly lengthM: number; readonly widthM: number },
) {
  const isSameTable = lengthM === shape.lengthM && widthM === shape.widthM;
  return isSameTable && ball !== null && pocket !== null ? { ball, pocket } : null;
}
