import { latestVersion, MIGRATIONS } from '../migrations';
import { SHELF_NAMES } from '../shelf-names';
import type { ContentStore, Contents } from '../store-port';
import {
  BACKUP_FORMAT,
  type BackupHeader,
  checksumsOf,
  type Digest,
  sealLine,
  writeChecksums,
} from './backup-format';
import { writeValue } from './write-value';

/** The text of a backup: a header, a line for every row, and checksums. */
export async function writeBackup(
  contents: Contents,
  savedAtMs: number,
  digest: Digest | null,
): Promise<string> {
  const rows = rowsOf(contents);
  const header: BackupHeader = {
    leewayBackup: BACKUP_FORMAT,
    app: 'Leeway',
    savedAtMs,
    schema: latestVersion(MIGRATIONS),
    lines: rows.length,
  };
  const open = [
    JSON.stringify(header).slice(0, -1),
    ...rows.map(([store, row]) => `{"store":"${store}","row":${writeValue(row)}`),
  ];
  const sealed = open.map((line, index) => `${sealLine(line, index + 1)}\n`).join('');
  return `${sealed}${writeChecksums(await checksumsOf(sealed, digest))}\n`;
}

/** Every row, in an order that is the same on every device. */
function rowsOf({
  shelves,
  attempts,
  positions,
  desk,
  setAside,
}: Contents): [ContentStore, unknown][] {
  return [
    ...SHELF_NAMES.flatMap((shelf) => byId(shelves[shelf]).map((row) => pair(shelf, row))),
    ...attempts.map((row) => pair('attempts', row)),
    ...byId(positions).map((row) => pair('positions', row)),
    pair('desk', desk),
    ...setAside.map((row) => pair('set-aside', row)),
  ];
}

const pair = (store: ContentStore, row: unknown): [ContentStore, unknown] => [store, row];

interface WithId {
  readonly id: string;
}

function byId(records: readonly WithId[]): readonly WithId[] {
  return [...records].sort((one, other) => (one.id < other.id ? -1 : 1));
}
