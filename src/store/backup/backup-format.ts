import type { ContentStore } from '../contents';
import { crc32 } from './crc-32';

/** The version of the file's own form; that of the rows is the database's. */
export const BACKUP_FORMAT = 1;

/** The first line of a backup. */
export interface BackupHeader {
  readonly leewayBackup: number;
  readonly app: string;
  readonly savedAtMs: number;
  /** The version of the database's layout that the rows are from. */
  readonly schema: number;
  /** How many rows follow. */
  readonly lines: number;
  /** Whether it is of one player alone, and so lacks what a whole one never does. */
  readonly isPart?: boolean;
}

/** SHA-256 of some bytes; browsers give it on https only. */
export type Digest = (bytes: Uint8Array<ArrayBuffer>) => Promise<ArrayBuffer>;

/** What the last line says of all bytes before it. */
export interface Checksums {
  readonly crc32: string;
  /** Null where it could not be had. */
  readonly sha256: string | null;
}

const SEAL_LENGTH = ',"crc":"00000000"}'.length;

/** Closes a line's object with a checksum of it and of the line's place, which is counted from 1. */
export function sealLine(open: string, number: number): string {
  return `${open},"crc":"${sealOf(open, number)}"}`;
}

/** What was sealed, or null where the line is not as it was, or not where it was. */
export function unsealLine(line: string, number: number): string | null {
  const open = line.slice(0, -SEAL_LENGTH);
  return line === sealLine(open, number) ? `${open}}` : null;
}

function sealOf(open: string, number: number): string {
  return crc32(new TextEncoder().encode(`${number}:${open}`));
}

/** Both checksums of a text's bytes, as far as they can be had. */
export async function checksumsOf(text: string, digest: Digest | null): Promise<Checksums> {
  const bytes = new TextEncoder().encode(text);
  const buffer = await digest?.(bytes).catch(() => null);
  return { crc32: crc32(bytes), sha256: buffer ? hexOf(buffer) : null };
}

export function writeChecksums({ crc32, sha256 }: Checksums): string {
  return sha256 === null ? `{"crc32":"${crc32}"}` : `{"crc32":"${crc32}","sha256":"${sha256}"}`;
}

const CHECKSUMS = /^\{"crc32":"([0-9a-f]{8})"(?:,"sha256":"([0-9a-f]{64})")?\}$/;

/** Null where a line is no last line. */
export function readChecksums(line: string): Checksums | null {
  const found = CHECKSUMS.exec(line);
  return found ? { crc32: found[1] ?? '', sha256: found[2] ?? null } : null;
}

function hexOf(buffer: ArrayBuffer): string {
  return Array.from(new Uint8Array(buffer), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The browser's SHA-256; null where there is none, which is so outside https. */
export function findDigest(
  source: { readonly subtle?: Pick<SubtleCrypto, 'digest'> | undefined } = globalThis.crypto,
): Digest | null {
  const { subtle } = source;
  return subtle ? (bytes) => subtle.digest('SHA-256', bytes) : null;
}

/** Why a file is no backup to go by. */
export interface Refused {
  readonly ok: false;
  /** The first line that is wrong, counted from 1. */
  readonly line: number;
  readonly fault: BackupFault;
}

/**
 * What is wrong with a line, or at it with the file.
 * - `not-ours`: it is no header of a backup, or a damaged one.
 * - `newer`: a newer version of the app wrote it.
 * - `damaged`: it is not as it was sealed, or not where it was.
 * - `miscounted`: there should be so many rows before it.
 * - `cut-short`: the file ends here, without its checksums.
 * - `no-row`: it says of no known store what it is.
 * - `repeated`: the same row is on an earlier line.
 * - `missing`: the file has nothing of a store that is never empty.
 * - `unreadable`: a row beyond repair.
 */
export type BackupFault =
  | {
      readonly reason:
        | 'too-large'
        | 'not-ours'
        | 'newer'
        | 'damaged'
        | 'cut-short'
        | 'not-its-checksum'
        | 'no-row'
        | 'too-many'
        | 'unreadable';
    }
  | { readonly reason: 'miscounted'; readonly rows: number }
  | { readonly reason: 'repeated'; readonly earlier: number }
  | { readonly reason: 'missing'; readonly store: ContentStore };

export function refuse(line: number, fault: BackupFault): Refused {
  return { ok: false, line, fault };
}
