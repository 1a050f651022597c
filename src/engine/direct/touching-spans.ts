import { type Phase, placeAt } from '../motion/phase';
import { bracketedRoot } from '../numerics/bracketed-root';
import type { ContactProber } from './contact-probe';

/** Least advance outside range, m, so that skimming along its rim cannot stall the march. */
const LEAST_ADVANCE_M = 1e-6;
/** Samples over the reach of two balls: the line of centres turns some 20° between two of them. */
const SAMPLES_PER_REACH = 10;
/** A span of fewer samples only skims touching range. */
const LEAST_SAMPLES = 12;
const SKIM_SAMPLES = 64;
/** How far outside range its rim is sampled, m: below any contact that a double can tell apart. */
const RIM_M = 1e-13;
/** Caps, far above what any path takes: range is entered at most a few times. */
const MAX_STEPS = 20_000;
const MAX_SPANS = 8;

/**
 * The stretches of a phase within touching range of where the object ball could lie, each as sample
 * times (s since the phase's start) from its rim to its rim, close enough together to tell roots
 * apart.
 */
export function touchingSpans(phase: Phase, prober: ContactProber): number[][] {
  const spans: number[][] = [];
  let fromS = 0;
  while (spans.length < MAX_SPANS && fromS < phase.durationS) {
    const entryS = entryTime(phase, prober, fromS);
    if (entryS === null) break;
    const span = samplesWithin(phase, prober, entryS);
    spans.push(filledIn(span));
    fromS = span.at(-1) ?? phase.durationS;
  }
  return spans;
}

/** When range is next entered, or null; the march steps no further than the ball can have come. */
function entryTime(phase: Phase, prober: ContactProber, fromS: number): number | null {
  let beforeS = fromS;
  let timeS = fromS;
  for (let step = 0; step < MAX_STEPS; step++) {
    const gapM = gapAt(phase, prober, timeS);
    if (gapM <= 0) return timeS === fromS ? timeS : rimTime(phase, prober, timeS, beforeS);
    if (timeS >= phase.durationS) return null;
    beforeS = timeS;
    timeS = timeAfter(phase, prober, timeS, Math.max(gapM, LEAST_ADVANCE_M));
    // It ends before the ball can have come that far.
    if (timeS >= phase.durationS && gapM >= LEAST_ADVANCE_M) return null;
  }
  return null;
}

/** Sample times from an entry to just past the rim again, or to the phase's end. */
function samplesWithin(phase: Phase, prober: ContactProber, entryS: number): number[] {
  const spacingM = (2 * phase.radiusM) / SAMPLES_PER_REACH;
  const times = [entryS];
  let advanceM = spacingM;
  let timeS = entryS;
  let isToPlace = true;
  for (let step = 0; step < MAX_STEPS && timeS < phase.durationS; step++) {
    if (isToPlace) placeAt(phase, timeS, prober.place);
    const nextS = timeAfter(phase, prober, timeS, advanceM);
    const isOutside = gapAt(phase, prober, nextS) > 0;
    if (isOutside && timeS === entryS && advanceM > LEAST_ADVANCE_M) {
      // Range is left within one spacing of the rim: come nearer, for a skim counts too.
      advanceM /= 2;
      isToPlace = true;
      continue;
    }
    if (isOutside) {
      times.push(timeS === entryS ? nextS : rimTime(phase, prober, timeS, nextS));
      break;
    }
    times.push(nextS);
    isToPlace = false;
    advanceM = spacingM;
    timeS = nextS;
  }
  return times;
}

/**
 * A span that only skims touching range is sampled anew, densest at its rims: over the top of the
 * object ball the line of centres swings right round within a few millimetres of them.
 */
function filledIn(times: number[]): number[] {
  const [from, to] = [times[0], times.at(-1)];
  if (times.length >= LEAST_SAMPLES || from === undefined || to === undefined) return times;
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  return Array.from({ length: SKIM_SAMPLES }, (_, index) => {
    const share = index / (SKIM_SAMPLES - 1);
    if (share === 0 || share === 1) return share === 0 ? from : to;
    return middle - half * Math.cos(Math.PI * share);
  });
}

function gapAt(phase: Phase, prober: ContactProber, timeS: number): number {
  placeAt(phase, timeS, prober.place);
  return prober.gapM();
}

/** The soonest that the ball, at the prober's place now, can have covered a distance. */
function timeAfter(phase: Phase, prober: ContactProber, timeS: number, distanceM: number): number {
  const { vx, vy, vz } = prober.place;
  const speed2 = vx * vx + vy * vy + vz * vz;
  const root = Math.sqrt(speed2 + 2 * phase.accelerationBound * distanceM);
  return Math.min(phase.durationS, timeS + (2 * distanceM) / (Math.sqrt(speed2) + root));
}

/** A moment just outside range, next to one inside: there both flanks are one. */
function rimTime(phase: Phase, prober: ContactProber, insideS: number, outsideS: number): number {
  const beyondRim = (timeS: number) => gapAt(phase, prober, timeS) - RIM_M;
  const atInside = beyondRim(insideS);
  const atOutside = beyondRim(outsideS);
  if (atOutside <= 0) return outsideS;
  return bracketedRoot(beyondRim, insideS, atInside, outsideS, atOutside, 0, RIM_M / 2).x;
}
