import type { Point } from './canvas';

/** A contact on the cue ball's face, fractions of the radius: side right +, height up +. */
export interface TipContact {
  readonly side: number;
  readonly height: number;
}

/** Which contacts the face marks, fractions of the radius. */
export interface FaceMarks {
  /** None are beyond it. */
  readonly limit: number;
  /** How far apart they are, both ways. */
  readonly step: number;
}

/** Contacts that are marked on the face. */
export function snapContacts({ limit, step }: FaceMarks): readonly TipContact[] {
  const contacts: TipContact[] = [];
  const steps = Math.floor(limit / step + 1e-9);
  for (let up = steps; up >= -steps; up--) {
    for (let across = -steps; across <= steps; across++) {
      const contact = { side: across * step, height: up * step };
      if (Math.hypot(contact.side, contact.height) <= limit) contacts.push(contact);
    }
  }
  return contacts;
}

/** A contact this near a marked one is meant to be on it, radii. */
const SNAP_REACH = 0.07;

/**
 * The contact under a point of the face, on the nearest marked one when close to it.
 * @param point from the face's top left corner, px
 * @param sizePx width and height of the square that the face fills but for its margin
 * @param marginShare clear share of the size on each side of the ball
 */
export function contactAt(
  point: Point,
  sizePx: number,
  marginShare: number,
  marks: FaceMarks,
): TipContact {
  const radiusPx = sizePx * (0.5 - marginShare);
  const free = {
    side: (point.x - sizePx / 2) / radiusPx,
    height: (sizePx / 2 - point.y) / radiusPx,
  };
  return snappedContact(free, marks);
}

/** The nearest marked contact when close to one, else the contact in plain figures. */
export function snappedContact(free: TipContact, marks: FaceMarks): TipContact {
  const near = snapContacts(marks).find(
    ({ side, height }) => Math.hypot(side - free.side, height - free.height) <= SNAP_REACH,
  );
  return near ?? { side: rounded(free.side), height: rounded(free.height) };
}

/** A finger cannot place finer than this; plainer figures read better. */
function rounded(fraction: number): number {
  return Math.round(fraction * 50) / 50;
}
