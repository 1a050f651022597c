import { type NistProblem, towardsLimit } from './nist-problem';

/** Pressure and volume of two problems. */
const MISRA_X = [
  77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0,
];
const MISRA_Y = [
  10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
];

const misra1a: NistProblem = {
  name: 'Misra1a',
  model: towardsLimit,
  y: MISRA_Y,
  x: MISRA_X,
  starts: [
    [500, 0.0001],
    [250, 0.0005],
  ],
  certified: [2.3894212918e2, 5.5015643181e-4],
  certifiedSd: [2.7070075241, 7.2668688436e-6],
  certifiedSumOfSquares: 1.2455138894e-1,
};

const misra1b: NistProblem = {
  name: 'Misra1b',
  model: ([b1 = 0, b2 = 0], x) => {
    const base = 1 + (b2 * x) / 2;
    return [b1 * (1 - base ** -2), 1 - base ** -2, b1 * x * base ** -3];
  },
  y: MISRA_Y,
  x: MISRA_X,
  starts: [
    [500, 0.0001],
    [300, 0.0002],
  ],
  certified: [3.3799746163e2, 3.9039091287e-4],
  certifiedSd: [3.1643950207, 4.2547321834e-6],
  certifiedSumOfSquares: 7.5464681533e-2,
};

const chwirut2: NistProblem = {
  name: 'Chwirut2',
  model: ([b1 = 0, b2 = 0, b3 = 0], x) => {
    const below = b2 + b3 * x;
    const value = Math.exp(-b1 * x) / below;
    return [value, -x * value, -value / below, (-x * value) / below];
  },
  y: [
    92.9, 57.1, 31.05, 11.5875, 8.025, 63.6, 21.4, 14.25, 8.475, 63.8, 26.8, 16.4625, 7.125, 67.3,
    41.0, 21.15, 8.175, 81.5, 13.12, 59.9, 14.62, 32.9, 5.44, 12.56, 5.44, 32.0, 13.95, 75.8, 20.0,
    10.42, 59.5, 21.67, 8.55, 62.0, 20.2, 7.76, 3.75, 11.81, 54.7, 23.7, 11.55, 61.3, 17.7, 8.74,
    59.2, 16.3, 8.62, 81.0, 4.87, 14.62, 81.7, 17.17, 81.3, 28.9,
  ],
  x: [
    0.5, 1.0, 1.75, 3.75, 5.75, 0.875, 2.25, 3.25, 5.25, 0.75, 1.75, 2.75, 4.75, 0.625, 1.25, 2.25,
    4.25, 0.5, 3.0, 0.75, 3.0, 1.5, 6.0, 3.0, 6.0, 1.5, 3.0, 0.5, 2.0, 4.0, 0.75, 2.0, 5.0, 0.75,
    2.25, 3.75, 5.75, 3.0, 0.75, 2.5, 4.0, 0.75, 2.5, 4.0, 0.75, 2.5, 4.0, 0.5, 6.0, 3.0, 0.5, 2.75,
    0.5, 1.75,
  ],
  starts: [
    [0.1, 0.01, 0.02],
    [0.15, 0.008, 0.01],
  ],
  certified: [1.6657666537e-1, 5.1653291286e-3, 1.2150007096e-2],
  certifiedSd: [3.830328681e-2, 6.6621605126e-4, 1.5304234767e-3],
  certifiedSumOfSquares: 5.1304802941e2,
};

const lanczos3: NistProblem = {
  name: 'Lanczos3',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0], x) => {
    const [one, two, three] = [Math.exp(-b2 * x), Math.exp(-b4 * x), Math.exp(-b6 * x)];
    const value = b1 * one + b3 * two + b5 * three;
    return [value, one, -b1 * x * one, two, -b3 * x * two, three, -b5 * x * three];
  },
  y: [
    2.5134, 2.0443, 1.6684, 1.3664, 1.1232, 0.9269, 0.7679, 0.6389, 0.5338, 0.4479, 0.3776, 0.3197,
    0.272, 0.2325, 0.1997, 0.1723, 0.1493, 0.1301, 0.1138, 0.1, 0.0883, 0.0783, 0.0698, 0.0624,
  ],
  x: [
    0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85,
    0.9, 0.95, 1, 1.05, 1.1, 1.15,
  ],
  starts: [
    [1.2, 0.3, 5.6, 5.5, 6.5, 7.6],
    [0.5, 0.7, 3.6, 4.2, 4, 6.3],
  ],
  certified: [
    8.6816414977e-2, 9.5498101505e-1, 8.4400777463e-1, 2.9515951832, 1.5825685901, 4.9863565084,
  ],
  certifiedSd: [
    1.7197908859e-2, 9.7041624475e-2, 4.1488663282e-2, 1.0766312506e-1, 5.8371576281e-2,
    3.4436403035e-2,
  ],
  certifiedSumOfSquares: 1.6117193594e-8,
};

const danWood: NistProblem = {
  name: 'DanWood',
  model: ([b1 = 0, b2 = 0], x) => [b1 * x ** b2, x ** b2, b1 * x ** b2 * Math.log(x)],
  y: [2.138, 3.421, 3.597, 4.34, 4.882, 5.66],
  x: [1.309, 1.471, 1.49, 1.565, 1.611, 1.68],
  starts: [
    [1, 5],
    [0.7, 4],
  ],
  certified: [7.6886226176e-1, 3.8604055871],
  certifiedSd: [1.828197386e-2, 5.1726610913e-2],
  certifiedSumOfSquares: 4.3173084083e-3,
};

/** Those NIST calls of lower difficulty. Source: NIST StRD, read in public copies. */
export const LOWER: readonly NistProblem[] = [misra1a, misra1b, chwirut2, lanczos3, danWood];
