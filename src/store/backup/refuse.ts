/** Why a file is no backup to go by. */
export interface Refused {
  readonly ok: false;
  /** The first line that is wrong, counted from 1. */
  readonly line: number;
  /** One kind line, ready to show. */
  readonly message: string;
}

export function refuse(line: number, message: string): Refused {
  return { ok: false, line, message };
}
