import { isWithin } from '../../engine/numerics/range';
import { isPlainObject } from '../mend';
import { TIME_RANGE_MS } from '../record-ranges';
import { BACKUP_FORMAT, type BackupHeader, unsealLine } from './backup-format';
import { readValue } from './read-value';
import { type Refused, refuse } from './refuse';

const NOT_OURS = refuse(1, 'This is no Leeway backup, or its first line is damaged.');
const NEWER = refuse(1, 'This was written by a newer Leeway: update first.');

/** Reads the first line of a file that may be anything. */
export function readHeader(
  line: string,
  latestSchema: number,
): Refused | (BackupHeader & { readonly ok: true }) {
  const read = readValue(line);
  const found = read.ok ? read.value : null;
  if (!isPlainObject(found) || found.app !== 'Leeway') return NOT_OURS;
  const { leewayBackup, app, savedAtMs, schema, lines } = found;
  if (!isCount(leewayBackup)) return NOT_OURS;
  // A newer form may seal its lines in another way, so this comes first.
  if (leewayBackup > BACKUP_FORMAT) return NEWER;
  if (unsealLine(line, 1) === null) return NOT_OURS;
  if (!isCount(schema) || !isCount(lines) || !isWithin(TIME_RANGE_MS, savedAtMs)) return NOT_OURS;
  if (schema > latestSchema) return NEWER;
  return { ok: true, leewayBackup, app, savedAtMs, schema, lines };
}

const isCount = (was: unknown): was is number => Number.isSafeInteger(was) && Number(was) > 0;
