import type { CorePiece, CushionShape } from './cushion-shape';

/** What of a cushion a ball may touch: a point is where nose and jaw meet. */
export type CushionPart = 'nose' | 'jaw' | 'point';

/** The place on a cushion's edge nearest to a ball. A scratch pad. */
export interface NearestOnCushion {
  /** Unit vector from the ball's centre to it, seen from above. */
  nx: number;
  ny: number;
  /** How far off the edge the centre is, seen from above, m; below 0 over the cushion. */
  awayM: number;
  part: CushionPart;
}

export function newNearest(): NearestOnCushion {
  return { nx: 0, ny: 0, awayM: 0, part: 'nose' };
}

/** Writes the nearest place on a cushion to (xM, yM) into `nearest`. */
export function nearestOnCushion(
  cushion: CushionShape,
  xM: number,
  yM: number,
  nearest: NearestOnCushion,
): void {
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0; index < cushion.core.length; index++) {
    const piece = cushion.core[index];
    if (piece === undefined) continue;
    const alongM = nearestAlong(piece, xM, yM);
    const dx = piece.fromX + alongM * piece.alongX - xM;
    const dy = piece.fromY + alongM * piece.alongY - yM;
    const square = dx * dx + dy * dy;
    if (!(square < least)) continue;
    least = square;
    nearest.nx = dx;
    nearest.ny = dy;
    nearest.part = partAt(index, alongM, piece.lengthM);
  }
  const distanceM = Math.sqrt(least);
  nearest.nx /= distanceM;
  nearest.ny /= distanceM;
  nearest.awayM = distanceM - cushion.roundingM;
}

/** How far along a piece its nearest place is, m. */
function nearestAlong(piece: CorePiece, xM: number, yM: number): number {
  const alongM = (xM - piece.fromX) * piece.alongX + (yM - piece.fromY) * piece.alongY;
  return Math.min(piece.lengthM, Math.max(0, alongM));
}

/** Pieces run jaw, nose, jaw; the points are their inner ends. */
function partAt(index: number, alongM: number, lengthM: number): CushionPart {
  if (index === 1) return alongM > 0 && alongM < lengthM ? 'nose' : 'point';
  const inner = index === 0 ? lengthM : 0;
  return alongM === inner ? 'point' : 'jaw';
}
