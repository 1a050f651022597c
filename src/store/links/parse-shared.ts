import type { ParsedRow } from '../contents';
import { DEFAULT_DESK } from '../default-desk';
import type { NoteMend } from '../mend';
import { mendDesk } from '../parse-desk';
import { parsePosition } from '../parse-position';
import { parseRecord } from '../parse-record';
import { SHELF_NAMES, type ShelfName } from '../records';
import type { Shared, SharedKit } from './shared';

/** What a link brings, made valid. */
export interface ParsedShared {
  readonly shared: Shared;
  /** How many things in it had to be mended. */
  readonly mended: number;
}

/**
 * Takes what a link says through the parsers of all that is kept; null where it says nothing, or
 * something beyond mending.
 */
export function parseShared(raw: Shared): ParsedShared | null {
  let [mended, isWhole, parts] = [0, true, 0];
  const note: NoteMend = (_field, was, now) => {
    if (!isRounding(was, now)) mended += 1;
  };
  const taken = <T>(row: ParsedRow<T>): T | null => {
    parts += 1;
    isWhole &&= row.ok;
    if (!row.ok) return null;
    for (const { field, was, now } of row.repairs) note(field, was, now);
    return row.record;
  };
  const { shot, pocket } = mendDesk({ ...DEFAULT_DESK, ...raw.shot }, '', note);
  const record = (shelf: ShelfName) => [shelf, taken(parseRecord(shelf, raw.kit[shelf]))] as const;
  const shared = {
    shot: raw.shot && { shot, pocket },
    position: raw.position && taken(parsePosition(raw.position)),
    kit: Object.fromEntries(SHELF_NAMES.filter((shelf) => raw.kit[shelf]).map(record)) as SharedKit,
  };
  return isWhole && (shared.shot || parts > 0) ? { shared, mended } : null;
}

/** A number at the end of its range may come out a hair beyond it. */
const ROUNDING = 1e-6;

function isRounding(was: unknown, now: unknown): boolean {
  const areNumbers = typeof was === 'number' && typeof now === 'number';
  return areNumbers && Math.abs(was - now) <= ROUNDING * Math.abs(now);
}
