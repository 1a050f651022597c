import type { Kit } from '../../engine/kit/kit';
import { legalPlace } from '../../engine/lie/legal-place';
import type { NamedBall, Position } from '../../engine/lie/position';
import type { TableShape } from '../../engine/table/table-shape';
import type { SavedPosition, Zone } from '../../store/saved-position';

/**
 * A position as it lies on a table: scaled where it was laid on another one, and with every ball on
 * the bed and out of the others, those that come first staying where they are.
 */
export function positionOnTable(
  position: SavedPosition,
  shape: TableShape,
  kit: Kit,
): SavedPosition {
  const across = shape.widthM / position.widthM;
  const along = shape.lengthM / position.lengthM;
  const scaled = <P extends { readonly xM: number; readonly yM: number }>(place: P): P =>
    across === 1 && along === 1 ? place : { ...place, xM: place.xM * across, yM: place.yM * along };
  const { lengthM, widthM } = shape;
  const zone: Zone | null = position.zone && {
    ...scaled(position.zone),
    radiusM: position.zone.radiusM * Math.min(across, along),
  };
  const balls = settled(position.balls.map(scaled), shape, kit);
  return { ...position, lengthM, widthM, zone, balls };
}

/** One that finds no room stays where it is: then there is no shot, and it is told why. */
function settled(balls: Position, shape: TableShape, kit: Kit): Position {
  const laid: NamedBall[] = [];
  for (const ball of balls) {
    const place = legalPlace(laid, ball.name, ball, shape, kit);
    laid.push(place === null || place === ball ? ball : { ...ball, ...placeOf(place) });
  }
  return laid;
}

function placeOf({ xM, yM }: { readonly xM: number; readonly yM: number }) {
  return { xM, yM };
}
