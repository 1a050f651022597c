export type ParseProblem =
  | 'empty'
  | 'not-a-number'
  | 'zero-denominator'
  | 'too-small'
  | 'too-large'
  | 'out-of-domain';

/** What became of something a person typed. */
export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | {
      readonly ok: false;
      readonly problem: ParseProblem;
      /** One kind line, ready to show. */
      readonly message: string;
    };
