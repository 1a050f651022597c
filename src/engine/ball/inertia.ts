/** A uniform solid ball has I = (2/5) m R². Every ratio below follows from it. */

/** m R² / I: what a tangential impulse does to the surface by spin, over what it does to the centre. */
export const SPIN_SHARE = 5 / 2;

/** 1 + m R² / I: change of a contact point's velocity per unit of tangential impulse over mass. */
export const SURFACE_RESPONSE = 1 + SPIN_SHARE;

/** Share of the slip that the centre loses while the slip runs out: 1 / (1 + m R² / I) = 2/7. */
export const SLIP_TO_CENTRE = 1 / SURFACE_RESPONSE;

/** Share of a push on the centre that speeds a ball rolling without slip: 5/7. */
export const PUSH_TO_ROLL = 1 - SLIP_TO_CENTRE;
