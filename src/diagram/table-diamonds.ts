import { DIAMONDS_ACROSS, DIAMONDS_ALONG } from '../engine/table/diamonds';

/** A place on a table, m: y from its middle towards the far end, x to the right seen so. */
export interface BedSpot {
  readonly xM: number;
  readonly yM: number;
}

/** Breadth of a rail as it is drawn, as a share of the table's length. */
export const RAIL_SHARE = 0.05;

/**
 * Where the diamonds of the four rails lie; the middle of a long rail has one too.
 * @param asideM from the noses outwards
 */
export function railDiamonds(lengthM: number, widthM: number, asideM: number): BedSpot[] {
  const x = widthM / 2 + asideM;
  const y = lengthM / 2 + asideM;
  const onLong = inner(DIAMONDS_ALONG).map((share) => share * lengthM);
  const onShort = inner(DIAMONDS_ACROSS).map((share) => share * widthM);
  return [
    ...onLong.flatMap((yM) => [
      { xM: -x, yM },
      { xM: x, yM },
    ]),
    ...onShort.flatMap((xM) => [
      { xM, yM: -y },
      { xM, yM: y },
    ]),
  ];
}

/** From −½ to ½, the ends left out. */
function inner(parts: number): number[] {
  return Array.from({ length: parts - 1 }, (_, i) => (i + 1) / parts - 0.5);
}
