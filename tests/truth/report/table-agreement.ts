import { compareTables, type TablesCompared } from './compare-tables';
import { TABLE_FAMILIES, type TableFamily, type TableFamilyName, tableQuery } from './table-cases';

/** What came of playing strokes of a family twice. */
export interface TableAgreement {
  readonly family: TableFamily;
  readonly strokes: number;
  /** What the engine tells of each stroke, as far as it is compared. */
  readonly told: readonly string[];
  /** Strokes for which the two tell of different touches, in words. */
  readonly parted: readonly string[];
  /** How far apart a ball is at the first touch, the second, and so on, mm. */
  readonly touchesMm: readonly (readonly number[])[];
  /** How far apart balls rest after no touch, one, two, and so on, mm. */
  readonly restsMm: readonly (readonly number[])[];
  /** Strokes in which a ball met a pocket's rounded point, and how far apart those rest, mm. */
  readonly points: number;
  readonly restsAfterPointsMm: readonly number[];
}

/** The first so many strokes of a family, played by engine and reference. */
export function comparedTables(name: TableFamilyName, strokes: number): readonly TablesCompared[] {
  const family: TableFamily = TABLE_FAMILIES[name];
  return Array.from({ length: strokes }, (_, number) =>
    compareTables(tableQuery(family, number), family.touches),
  );
}

/** What came of strokes of a family that have been compared. */
export function tableAgreement(
  name: TableFamilyName,
  compared: readonly TablesCompared[],
): TableAgreement {
  const family: TableFamily = TABLE_FAMILIES[name];
  const clear = compared.filter(({ meetsPoint }) => !meetsPoint);
  const pointed = compared.filter(({ meetsPoint }) => meetsPoint);
  const numbers = Array.from({ length: family.touches + 1 }, (_, number) => number);
  const rests = (some: readonly TablesCompared[]) =>
    some.flatMap(({ restMm }) => (restMm === null ? [] : [restMm]));
  return {
    family,
    strokes: compared.length,
    told: compared.map(({ engine }) => engine),
    parted: compared.flatMap(({ engine, reference }, number) =>
      engine === reference ? [] : [`stroke ${number}: ${engine}; but ${reference}`],
    ),
    touchesMm: numbers
      .slice(0, -1)
      .map((at) => compared.flatMap(({ touchesMm }) => touchesMm[at] ?? [])),
    restsMm: numbers.map((touches) =>
      rests(clear.filter(({ touchesMm }) => touchesMm.length === touches)),
    ),
    points: pointed.length,
    restsAfterPointsMm: rests(pointed),
  };
}
