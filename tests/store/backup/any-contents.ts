import fc from 'fast-check';
import { READING_RANGES, SPEED_WORDS, TRIAL_RANGES } from '../../../src/engine/fit/trials/trial';
import { TRIAL_NAMES } from '../../../src/engine/fit/trials/trials';
import type { Range } from '../../../src/engine/numerics/range';
import { DEFAULT_DESK } from '../../../src/store/default-desk';
import { DEMO_CATALOGUE } from '../../../src/store/demo-catalogue';
import { kitFields } from '../../../src/store/kit-fields';
import { withNumberAt } from '../../../src/store/number-at';
import { BED_RANGES, TABLE_RANGES, ZONE_RADIUS_RANGE } from '../../../src/store/record-ranges';
import { SHELF_NAMES, type ShelfName } from '../../../src/store/records';
import { CURVE_ATTEMPT } from '../invented-attempts';

/** Rows as a database may hold them, by store; every row of them is sound. */
export type RowsByStore = Readonly<
  Record<ShelfName | 'attempts' | 'positions' | 'set-aside', readonly object[]>
> & {
  readonly desk: object;
};

const within = ({ min, max }: Range) => fc.double({ min, max, noNaN: true });

/** What a record may carry that this version does not know. */
const unknownFields = fc.dictionary(
  fc.oneof(fc.constantFrom('~', '__proto__', 'toString', 'of'), fc.string({ minLength: 9 })),
  fc.oneof(fc.jsonValue(), fc.constantFrom(undefined, Number.NaN, Number.NEGATIVE_INFINITY, -0)),
  { maxKeys: 3 },
);

const timeMs = fc.integer({ min: 0, max: 2_000_000_000_000 });
/** Whatever a keyboard, or a broken one, can give; nothing that would be trimmed off. */
const line = fc.string({ maxLength: 25, unit: 'binary' }).map((text) => `.${text}.`);

const record = (shelf: ShelfName) =>
  fc
    .record({
      sound: fc.constantFrom(...DEMO_CATALOGUE[shelf]),
      fields: unknownFields,
      figures: fc.tuple(...kitFields(shelf).map(({ range }) => within(range))),
      own: fc.record({
        id: fc.oneof(fc.uuid(), fc.string({ minLength: 1 })),
        name: line,
        origin: fc.constantFrom('invented', 'by-hand'),
        changes: fc.array(fc.record({ atMs: timeMs, what: line }), { maxLength: 3 }),
        like: fc.option(fc.uuid()),
      }),
    })
    .map(({ sound, fields, figures, own }) =>
      kitFields(shelf).reduce<object & { readonly id: string }>(
        (made, { path }, index) => withNumberAt(made, path, figures[index] ?? 0),
        { ...fields, ...sound, ...own },
      ),
    );

const shelf = (name: ShelfName) =>
  fc.uniqueArray(record(name), { selector: ({ id }) => id, minLength: 1, maxLength: 4 });

const attempt = fc
  .record({
    fields: unknownFields,
    own: fc.record({
      id: fc.uuid(),
      startedAtMs: timeMs,
      modelVersion: fc.integer({ min: 1, max: 9 }),
      shot: fc.record({
        trial: fc.constantFrom(...TRIAL_NAMES),
        stroke: fc.record({
          headingRad: within(TRIAL_RANGES.headingRad),
          side: within(TRIAL_RANGES.side),
          height: within(TRIAL_RANGES.height),
          elevationRad: within(TRIAL_RANGES.elevationRad),
          speedMps: within(TRIAL_RANGES.speedMps),
          speedWord: fc.option(fc.constantFrom(...SPEED_WORDS)),
        }),
        setup: fc.record({
          distanceM: within(TRIAL_RANGES.distanceM),
          gapM: within(TRIAL_RANGES.gapM),
          cutRad: within(TRIAL_RANGES.cutRad),
          bedLengthM: within(TRIAL_RANGES.bedLengthM),
        }),
      }),
      readings: fc.record(
        { landingM: within(READING_RANGES.landingM), timeS: within(READING_RANGES.timeS) },
        { requiredKeys: [] },
      ),
      stepsDone: fc.array(fc.string({ maxLength: 20 }), { maxLength: 4 }),
      typed: fc.option(
        fc.record({ step: fc.string({ maxLength: 9 }), text: fc.string({ maxLength: 9 }) }),
      ),
      isStruckOut: fc.boolean(),
    }),
  })
  .map(({ fields, own }) => ({ ...fields, ...CURVE_ATTEMPT, ...own }));

const ball = fc.record({
  name: fc.oneof(fc.constant('cue'), fc.integer({ min: 1, max: 15 })),
  xM: within(BED_RANGES.xM),
  yM: within(BED_RANGES.yM),
});

const position = fc
  .record({
    fields: unknownFields,
    own: fc.record({
      id: fc.uuid(),
      name: line,
      origin: fc.constantFrom('invented', 'by-hand'),
      lengthM: within(TABLE_RANGES.lengthM),
      widthM: within(TABLE_RANGES.widthM),
      balls: fc.uniqueArray(ball, { selector: ({ name }) => name, maxLength: 16 }),
      goal: fc.record({
        kind: fc.constant('pot'),
        via: fc.constant([]),
        ball: fc.option(fc.integer({ min: 1, max: 15 })),
        pocket: fc.option(fc.constantFrom('near-left', 'middle-right', 'far-left')),
      }),
      zone: fc.option(
        fc.record({
          xM: within(BED_RANGES.xM),
          yM: within(BED_RANGES.yM),
          radiusM: within(ZONE_RADIUS_RANGE),
        }),
      ),
      changedAtMs: timeMs,
    }),
  })
  .map(({ fields, own }) => ({ ...fields, ...own }));

const setAside = fc.record({
  store: fc.constantFrom(...SHELF_NAMES, 'attempts', 'positions', 'desk', 'set-aside'),
  raw: fc.oneof(fc.jsonValue(), unknownFields, fc.constantFrom(undefined, Number.NaN, -0)),
  reason: fc.constantFrom('not-a-record', 'no-id', 'nothing-readable', 'unreadable', 'repaired'),
});

const desk = unknownFields.map((fields) => ({ ...fields, ...DEFAULT_DESK }));

export const anyRows: fc.Arbitrary<RowsByStore> = fc.record({
  cues: shelf('cues'),
  cloths: shelf('cloths'),
  balls: shelf('balls'),
  tables: shelf('tables'),
  attempts: fc.uniqueArray(attempt, { selector: ({ id }) => id, maxLength: 6 }),
  positions: fc.uniqueArray(position, { selector: ({ id }) => id, maxLength: 6 }),
  'set-aside': fc.array(setAside, { maxLength: 4 }),
  desk,
});
