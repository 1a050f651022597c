import { LONGEST_NAME } from '../store/parse-named';
import { LIST_PROBLEMS } from '../words/list-problems';

/** A name as it is kept, or why it cannot be, in one kind line. */
export type TypedName =
  | { readonly ok: true; readonly name: string }
  | { readonly ok: false; readonly problem: string };

export function typedName(typed: string): TypedName {
  const name = typed.trim();
  if (name === '') return { ok: false, problem: LIST_PROBLEMS.noName };
  if (name.length > LONGEST_NAME) {
    return { ok: false, problem: LIST_PROBLEMS.longName(LONGEST_NAME) };
  }
  return { ok: true, name };
}
