/**
 * Where and how a ball touches a cushion. The line from the ball's centre to the nose points into
 * the cushion and rises by an angle θ; the rest is seen along the rail, into it and up.
 */
export interface CushionContact {
  /** sin θ, + where the nose is above the ball's centre. */
  readonly sinRise: number;
  readonly cosRise: number;
  /** What friction at one contact changes the other's slip by, along the rail and across. */
  readonly alongShare: number;
  readonly acrossShare: number;
  readonly restitution: number;
  readonly noseFriction: number;
  readonly bedFriction: number;
  /** Whether the bed is right under the ball, to hold it up while it does not rise. */
  readonly overBed: boolean;
}

/** How a ball moves against what it touches, m/s. Together as good as its velocity and spin. */
export interface Slips {
  /** Speed into the nose, along the line from the ball's centre. */
  readonly closing: number;
  /** Speed upward. */
  readonly rising: number;
  /** Slip over the nose, along the rail and up the ball's face. */
  readonly noseAlong: number;
  readonly noseUp: number;
  /** Slip over the bed, along the rail and into it. */
  readonly bedAlong: number;
  readonly bedInto: number;
}

/** What nose and bed give a ball: impulses over its mass, m/s. */
export interface Push {
  /** Along the line from the nose to the ball's centre, and friction square to it. */
  nose: number;
  noseAlong: number;
  noseUp: number;
  /** Upward, and friction square to it. */
  bed: number;
  bedAlong: number;
  bedInto: number;
}
