import { KIT_PROBLEMS } from '../words/kit-problems';

/** What became of a change that was asked for. */
export type EditResult =
  | { readonly ok: true }
  | {
      readonly ok: false;
      /** One kind line, ready to show. */
      readonly problem: string;
    };

/** The same of a copy, with the id that it got. */
export type CopyResult =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly problem: string };

export const NOT_THERE = { ok: false, problem: KIT_PROBLEMS.notThere } as const;
