import fc from 'fast-check';

/** What a damaged field may hold. */
export const anything = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom(undefined, Number.NaN, Number.POSITIVE_INFINITY, -0),
  fc.double(),
  fc.date(),
);

/** A row with anything at all in some of its fields, and perhaps in some that it should not have. */
export const damage = (sound: object): fc.Arbitrary<Record<string, unknown>> =>
  fc
    .dictionary(fc.oneof(fc.constantFrom(...Object.keys(sound)), fc.string()), anything)
    .map((fields) => ({ ...sound, ...fields }));
