/** A velocity and where it has led. */
export interface Stepped {
  readonly wx: number;
  readonly wy: number;
  readonly dx: number;
  readonly dy: number;
}

/** Share of the time to rest, were all of the forces against it, that one step takes. */
const STEP_SHARE = 0.004;

/**
 * ẇ = −a·w/|w| + b in classical Runge-Kutta steps that shrink with |w|, up to a time or until next
 * to nothing of w is left. Knows nothing of any solution.
 *
 * @returns the state, and the time it is of
 */
export function steppedDrag(
  start: readonly [number, number],
  drag: number,
  push: readonly [number, number],
  untilS: number,
): Stepped & { readonly timeS: number } {
  const rate = (x: number, y: number): readonly [number, number] => {
    const size = Math.hypot(x, y);
    return [push[0] - (drag * x) / size, push[1] - (drag * y) / size];
  };
  let [wx, wy, dx, dy, timeS] = [start[0], start[1], 0, 0, 0];
  const still = 1e-9 * Math.hypot(wx, wy);
  const most = drag + Math.hypot(...push);
  while (timeS < untilS && Math.hypot(wx, wy) > still) {
    const h = Math.min(untilS - timeS, (STEP_SHARE * Math.hypot(wx, wy)) / most);
    const k1 = rate(wx, wy);
    const k2 = rate(wx + (h / 2) * k1[0], wy + (h / 2) * k1[1]);
    const k3 = rate(wx + (h / 2) * k2[0], wy + (h / 2) * k2[1]);
    const k4 = rate(wx + h * k3[0], wy + h * k3[1]);
    dx += h * (wx + (h / 6) * (k1[0] + k2[0] + k3[0]));
    dy += h * (wy + (h / 6) * (k1[1] + k2[1] + k3[1]));
    wx += (h / 6) * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]);
    wy += (h / 6) * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]);
    timeS += h;
  }
  return { wx, wy, dx, dy, timeS };
}
