/** Standard acceleration of free fall, m/s². Source: 3rd CGPM (1901), exact by convention. */
export const STANDARD_GRAVITY = 9.80665;
