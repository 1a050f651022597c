import type { ContentStore, Contents, Repair } from '../contents';
import { isCount, isTime } from '../known-values';
import { isPlainObject } from '../mend';
import { latestVersion, MIGRATIONS } from '../migrations';
import { contentsOf, type ReadContents, readContents } from '../read-contents';
import { CONTENT_STORES, LIST_NAMES } from '../stores';
import {
  BACKUP_FORMAT,
  type BackupHeader,
  type Checksums,
  checksumsOf,
  type Digest,
  type Refused,
  readChecksums,
  refuse,
  unsealLine,
} from './backup-format';
import { gatherRows, type Line } from './gather-rows';
import { splitLines } from './split-lines';
import { readValue } from './value-text';

/** A backup found whole, and every row of it made valid. */
export interface Backup {
  readonly savedAtMs: number;
  /** The version of the database's layout that it was written from. */
  readonly schema: number;
  readonly contents: Contents;
  /** The stores that it has rows of: what the contents hold of others is as on a first visit. */
  readonly told: readonly ContentStore[];
  /** Whether it is of one player alone: it can be added to what is here, and not take its place. */
  readonly isPart: boolean;
  /** What had to be mended; the rows as they were are set aside in the contents. */
  readonly repairs: readonly Repair[];
  /** A SHA-256 can be checked only where there is one and the browser can work it out. */
  readonly checkedBy: 'sha256' | 'crc32';
}

export type ParsedBackup = { readonly ok: true; readonly backup: Backup } | Refused;

/**
 * A backup out of any text at all, or the first line that is wrong with it. Rows go through the same
 * parsers as the database's, which also fill in what an older layout did not have; one beyond repair
 * is a reason to refuse the file, since nothing of it may be lost unseen.
 * @param digest null where the browser gives none.
 */
export async function parseBackup(text: string, digest: Digest | null): Promise<ParsedBackup> {
  const lines = splitLines(text);
  if (!lines) return refuse(1, { reason: 'too-large' });
  const header = readHeader(lines[0] ?? '', latestVersion(MIGRATIONS));
  if (!header.ok) return header;
  const unsealed = unsealRows(lines);
  if (!unsealed.ok) return unsealed;
  if (unsealed.rows.length !== header.lines) {
    return refuse(lines.length, { reason: 'miscounted', rows: header.lines });
  }
  const checked = await checkWhole(lines, digest);
  if (!checked.ok) return checked;
  const { savedAtMs, schema, isPart = false } = header;
  const gathered = gatherRows(unsealed.rows, lines.length, isPart);
  if (!gathered.ok) return gathered;
  const read = readContents(gathered.raw);
  const beyondRepair = firstBeyondRepair(read);
  if (beyondRepair !== null) return refuse(beyondRepair, { reason: 'unreadable' });
  const contents = contentsOf(gathered.raw, read);
  const { repairs } = read.loaded;
  const told = CONTENT_STORES.filter((name) => (gathered.raw[name] ?? []).length > 0);
  return {
    ok: true,
    backup: { savedAtMs, schema, contents, told, isPart, repairs, checkedBy: checked.by },
  };
}

/** Every row's line as it was sealed. */
function unsealRows(
  lines: readonly string[],
): Refused | { readonly ok: true; readonly rows: readonly Line[] } {
  const rows: Line[] = [];
  for (let number = 2; number < lines.length; number += 1) {
    const text = unsealLine(lines[number - 1] ?? '', number);
    if (text === null) return refuse(number, { reason: 'damaged' });
    rows.push({ number, text });
  }
  return { ok: true, rows };
}

async function checkWhole(
  lines: readonly string[],
  digest: Digest | null,
): Promise<Refused | { readonly ok: true; readonly by: Backup['checkedBy'] }> {
  const claimed = readChecksums(lines.at(-1) ?? '');
  if (!claimed) return refuse(lines.length, { reason: 'cut-short' });
  const sealed = lines.slice(0, -1).map((line) => `${line}\n`);
  const found = await checksumsOf(sealed.join(''), claimed.sha256 === null ? null : digest);
  if (!isSame(claimed, found)) return refuse(lines.length, { reason: 'not-its-checksum' });
  return { ok: true, by: found.sha256 === null ? 'crc32' : 'sha256' };
}

/** What cannot be worked out here cannot be held against the file. */
function isSame(claimed: Checksums, found: Checksums): boolean {
  if (claimed.crc32 !== found.crc32) return false;
  return found.sha256 === null || claimed.sha256 === found.sha256;
}

/** Rows are keyed by their line here, so what would be taken off its shelf is told by it. */
function firstBeyondRepair(read: ReadContents): number | null {
  const lines = LIST_NAMES.map((name) => Number(read.lists[name].toDelete[0] ?? Infinity));
  const first = Math.min(...lines);
  return Number.isFinite(first) ? first : null;
}

const NOT_OURS = refuse(1, { reason: 'not-ours' });
const NEWER = refuse(1, { reason: 'newer' });

/** Reads the first line of a file that may be anything. */
function readHeader(
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
  if (!isCount(schema) || !isCount(lines) || !isTime(savedAtMs)) return NOT_OURS;
  if (schema > latestSchema) return NEWER;
  return { ok: true, leewayBackup, app, savedAtMs, schema, lines, isPart: found.isPart === true };
}
