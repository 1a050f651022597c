import {
  checksumsOf,
  findDigest,
  sealLine,
  writeChecksums,
} from '../../../src/store/backup/backup-format';
import { readValue, writeValue } from '../../../src/store/backup/value-text';

/** What a line of a backup says, without its seal. */
export type LineFields = Readonly<Record<string, unknown>>;

/** A backup with its lines changed, and every checksum made to fit again. */
export async function resealed(
  text: string,
  change: (lines: readonly LineFields[]) => readonly LineFields[],
): Promise<string> {
  const lines = text.split('\n').slice(0, -2);
  const changed = change(lines.map(fieldsOf)).map((fields) => writeValue(fields).slice(0, -1));
  return await sealed(changed);
}

/** The text of lines that lack nothing but their closing bracket, whatever they are. */
export async function sealed(open: readonly string[]): Promise<string> {
  const body = open.map((line, index) => `${sealLine(line, index + 1)}\n`).join('');
  return `${body}${writeChecksums(await checksumsOf(body, findDigest()))}\n`;
}

function fieldsOf(line: string): LineFields {
  const read = readValue(line);
  if (!read.ok) throw new Error(`not a line of a backup: ${line}`);
  const { crc: _, ...fields } = read.value as LineFields;
  return fields;
}
