import type { NistProblem } from './nist-problem';

const mgh17: NistProblem = {
  name: 'MGH17',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0], x) => {
    const [one, two] = [Math.exp(-b4 * x), Math.exp(-b5 * x)];
    return [b1 + b2 * one + b3 * two, 1, one, two, -b2 * x * one, -b3 * x * two];
  },
  y: [
    0.844, 0.908, 0.932, 0.936, 0.925, 0.908, 0.881, 0.85, 0.818, 0.784, 0.751, 0.718, 0.685, 0.658,
    0.628, 0.603, 0.58, 0.558, 0.538, 0.522, 0.506, 0.49, 0.478, 0.467, 0.457, 0.448, 0.438, 0.431,
    0.424, 0.42, 0.414, 0.411, 0.406,
  ],
  x: Array.from({ length: 33 }, (_, row) => 10 * row),
  starts: [
    [50, 150, -100, 1, 2],
    [0.5, 1.5, -1, 0.01, 0.02],
  ],
  certified: [3.7541005211e-1, 1.9358469127, -1.4646871366, 1.286753464e-2, 2.2122699662e-2],
  certifiedSd: [
    2.0723153551e-3, 2.2031669222e-1, 2.2175707739e-1, 4.4861358114e-4, 8.9471996575e-4,
  ],
  certifiedSumOfSquares: 5.4648946975e-5,
};

const roszman1: NistProblem = {
  name: 'Roszman1',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => {
    const beyond = x - b4;
    const perRatio = 1 / (Math.PI * (1 + (b3 / beyond) ** 2));
    const value = b1 - b2 * x - Math.atan(b3 / beyond) / Math.PI;
    return [value, 1, -x, -perRatio / beyond, (-perRatio * b3) / beyond ** 2];
  },
  y: [
    0.252429, 0.252141, 0.251809, 0.297989, 0.296257, 0.295319, 0.339603, 0.337731, 0.33382,
    0.38951, 0.386998, 0.438864, 0.434887, 0.427893, 0.471568, 0.461699, 0.461144, 0.513532,
    0.506641, 0.505062, 0.535648, 0.533726, 0.568064, 0.612886, 0.624169,
  ],
  x: [
    -4868.68, -4868.09, -4867.41, -3375.19, -3373.14, -3372.03, -2473.74, -2472.35, -2469.45,
    -1894.65, -1893.4, -1497.24, -1495.85, -1493.41, -1208.68, -1206.18, -1206.04, -997.92, -996.61,
    -996.31, -834.94, -834.66, -710.03, -530.16, -464.17,
  ],
  starts: [
    [0.1, -0.00001, 1000, -100],
    [0.2, -0.000005, 1200, -150],
  ],
  certified: [2.0196866396e-1, -6.1953516256e-6, 1.2044556708e3, -1.8134269537e2],
  certifiedSd: [1.9172666023e-2, 3.2058931691e-6, 7.4050983057e1, 4.9573513849e1],
  certifiedSumOfSquares: 4.9484847331e-4,
};

const NELSON_WEEKS = [1, 2, 4, 8, 16, 32, 48, 64];
const NELSON_CELSIUS = [180, 225, 250, 275];
/** Breakdown strength in kV: four readings at each temperature in turn, week after week. */
const NELSON_STRENGTH = [
  15, 17, 15.5, 16.5, 15.5, 15, 16, 14.5, 15, 14.5, 12.5, 11, 14, 13, 14, 11.5, 14, 16, 13, 13.5,
  13, 13.5, 12.5, 12.5, 12.5, 12, 11.5, 12, 13, 11.5, 13, 12.5, 13.5, 17.5, 17.5, 13.5, 12.5, 12.5,
  15, 13, 12, 13, 12, 13.5, 10, 11.5, 11, 9.5, 15, 15, 15.5, 16, 13, 10.5, 13.5, 14, 12.5, 12, 11.5,
  11.5, 6.5, 5.5, 6, 6, 18.5, 17, 15.3, 16, 13, 14, 12.5, 11, 12, 12, 11.5, 12, 6, 6, 5, 5.5, 12.5,
  13, 16, 12, 11, 9.5, 11, 11, 11, 10, 10.5, 10.5, 2.7, 2.7, 2.5, 2.4, 13, 13.5, 16.5, 13.6, 11.5,
  10.5, 13.5, 12, 7, 6.9, 8.8, 7.9, 1.2, 1.5, 1, 1.5, 13, 12.5, 16.5, 16, 11, 11.5, 10.5, 10, 7.27,
  7.5, 6.7, 7.6, 1.5, 1, 1.2, 1.2,
];

const nelson: NistProblem = {
  name: 'Nelson',
  model: ([b1 = 0, b2 = 0, b3 = 0], x1, x2) => {
    const growth = x1 * Math.exp(-b3 * x2);
    return [b1 - b2 * growth, 1, -growth, b2 * x2 * growth];
  },
  y: NELSON_STRENGTH.map(Math.log),
  x: NELSON_STRENGTH.map((_, row) => NELSON_WEEKS[Math.floor(row / 16)] ?? 0),
  x2: NELSON_STRENGTH.map((_, row) => NELSON_CELSIUS[Math.floor(row / 4) % 4] ?? 0),
  starts: [
    [2, 0.0001, -0.01],
    [2.5, 0.000000005, -0.05],
  ],
  certified: [2.5906836021, 5.6177717026e-9, -5.7701013174e-2],
  certifiedSd: [1.9149996413e-2, 6.112409654e-9, 3.9572366543e-3],
  certifiedSumOfSquares: 3.7976833176,
};

/** Those NIST calls of average difficulty. Source: NIST StRD, read in public copies. */
export const AVERAGE: readonly NistProblem[] = [mgh17, roszman1, nelson];
