import { bennett5 } from './bennett5';
import { type NistProblem, towardsLimit } from './nist-problem';

const thurber: NistProblem = {
  name: 'Thurber',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0, b5 = 0, b6 = 0, b7 = 0], x) => {
    const below = 1 + b5 * x + b6 * x ** 2 + b7 * x ** 3;
    const value = (b1 + b2 * x + b3 * x ** 2 + b4 * x ** 3) / below;
    const powers = [1, x, x ** 2, x ** 3];
    return [
      value,
      ...powers.map((power) => power / below),
      ...powers.slice(1).map((power) => (-value * power) / below),
    ];
  },
  y: [
    80.574, 84.248, 87.264, 87.195, 89.076, 89.608, 89.868, 90.101, 92.405, 95.854, 100.696, 101.06,
    401.672, 390.724, 567.534, 635.316, 733.054, 759.087, 894.206, 990.785, 1090.109, 1080.914,
    1122.643, 1178.351, 1260.531, 1273.514, 1288.339, 1327.543, 1353.863, 1414.509, 1425.208,
    1421.384, 1442.962, 1464.35, 1468.705, 1447.894, 1457.628,
  ],
  x: [
    -3.067, -2.981, -2.921, -2.912, -2.84, -2.797, -2.702, -2.699, -2.633, -2.481, -2.363, -2.322,
    -1.501, -1.46, -1.274, -1.212, -1.1, -1.046, -0.915, -0.714, -0.566, -0.545, -0.4, -0.309,
    -0.109, -0.103, 0.01, 0.119, 0.377, 0.79, 0.963, 1.006, 1.115, 1.572, 1.841, 2.047, 2.2,
  ],
  starts: [
    [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
    [1300, 1500, 500, 75, 1, 0.4, 0.05],
  ],
  certified: [
    1.28813968e3, 1.4910792535e3, 5.8323836877e2, 7.5416644291e1, 9.6629502864e-1, 3.9797285797e-1,
    4.9727297349e-2,
  ],
  certifiedSd: [
    4.6647963344, 3.9571156086e1, 2.8698696102e1, 5.567537027, 3.1333340687e-2, 1.4984928198e-2,
    6.5842344623e-3,
  ],
  certifiedSumOfSquares: 5.6427082397e3,
};

const mgh09: NistProblem = {
  name: 'MGH09',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => {
    const [above, below] = [x ** 2 + b2 * x, x ** 2 + b3 * x + b4];
    const value = (b1 * above) / below;
    return [value, above / below, (b1 * x) / below, (-value * x) / below, -value / below];
  },
  y: [0.1957, 0.1947, 0.1735, 0.16, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235, 0.0246],
  x: [4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625],
  starts: [
    [25, 39, 41.5, 39],
    [0.25, 0.39, 0.415, 0.39],
  ],
  certified: [1.9280693458e-1, 1.9128232873e-1, 1.2305650693e-1, 1.3606233068e-1],
  certifiedSd: [1.1435312227e-2, 1.9633220911e-1, 8.0842031232e-2, 9.0025542308e-2],
  certifiedSumOfSquares: 3.0750560385e-4,
};

const mgh10: NistProblem = {
  name: 'MGH10',
  model: ([b1 = 0, b2 = 0, b3 = 0], x) => {
    const growth = Math.exp(b2 / (x + b3));
    return [b1 * growth, growth, (b1 * growth) / (x + b3), (-b1 * b2 * growth) / (x + b3) ** 2];
  },
  y: [
    34780, 28610, 23650, 19630, 16370, 13720, 11540, 9744, 8261, 7030, 6005, 5147, 4427, 3820, 3307,
    2872,
  ],
  x: Array.from({ length: 16 }, (_, row) => 50 + 5 * row),
  starts: [
    [2, 400000, 25000],
    [0.02, 4000, 250],
  ],
  certified: [5.609636471e-3, 6.1813463463e3, 3.4522363462e2],
  certifiedSd: [1.5687892471e-4, 2.3309021107e1, 7.8486103508e-1],
  certifiedSumOfSquares: 8.7945855171e1,
};

const boxBod: NistProblem = {
  name: 'BoxBOD',
  model: towardsLimit,
  y: [109, 149, 149, 191, 213, 224],
  x: [1, 2, 3, 5, 7, 10],
  starts: [
    [1, 1],
    [100, 0.75],
  ],
  certified: [2.1380940889e2, 5.4723748542e-1],
  certifiedSd: [1.2354515176e1, 1.0455993237e-1],
  certifiedSumOfSquares: 1.1680088766e3,
};

const rat42: NistProblem = {
  name: 'Rat42',
  model: ([b1 = 0, b2 = 0, b3 = 0], x) => {
    const fall = Math.exp(b2 - b3 * x);
    const share = 1 / (1 + fall);
    const perPower = -b1 * share ** 2 * fall;
    return [b1 * share, share, perPower, -x * perPower];
  },
  y: [8.93, 10.8, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08],
  x: [9, 14, 21, 28, 42, 57, 63, 70, 79],
  starts: [
    [100, 1, 0.1],
    [75, 2.5, 0.07],
  ],
  certified: [7.2462237576e1, 2.6180768402, 6.7359200066e-2],
  certifiedSd: [1.7340283401, 8.8295217536e-2, 3.4465663377e-3],
  certifiedSumOfSquares: 8.0565229338,
};

const rat43: NistProblem = {
  name: 'Rat43',
  model: ([b1 = 0, b2 = 0, b3 = 0, b4 = 0], x) => {
    const fall = Math.exp(b2 - b3 * x);
    const share = (1 + fall) ** (-1 / b4);
    const perPower = (-b1 * share * fall) / ((1 + fall) * b4);
    const perRoot = (b1 * share * Math.log1p(fall)) / b4 ** 2;
    return [b1 * share, share, perPower, -x * perPower, perRoot];
  },
  y: [
    16.08, 33.83, 65.8, 97.2, 191.55, 326.2, 386.87, 520.53, 590.03, 651.92, 724.93, 699.56, 689.96,
    637.56, 717.41,
  ],
  x: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15],
  starts: [
    [100, 10, 1, 1],
    [700, 5, 0.75, 1.3],
  ],
  certified: [6.996415127e2, 5.2771253025, 7.5962938329e-1, 1.2792483859],
  certifiedSd: [1.6302297817e1, 2.0828735829, 1.9566123451e-1, 6.8761936385e-1],
  certifiedSumOfSquares: 8.786404908e3,
};

const eckerle4: NistProblem = {
  name: 'Eckerle4',
  model: ([b1 = 0, b2 = 0, b3 = 0], x) => {
    const z = (x - b3) / b2;
    const bell = Math.exp(-(z ** 2) / 2) / b2;
    return [b1 * bell, bell, (b1 * bell * (z ** 2 - 1)) / b2, (b1 * bell * z) / b2];
  },
  y: [
    0.0001575, 0.0001699, 0.000235, 0.0003102, 0.0004917, 0.000871, 0.0017418, 0.00464, 0.0065895,
    0.0097302, 0.0149002, 0.023731, 0.0401683, 0.0712559, 0.1264458, 0.2073413, 0.2902366,
    0.3445623, 0.3698049, 0.3668534, 0.3106727, 0.2078154, 0.1164354, 0.0616764, 0.03372, 0.0194023,
    0.0117831, 0.0074357, 0.0022732, 0.00088, 0.0004579, 0.0002345, 0.0001586, 0.0001143, 0.000071,
  ],
  x: [
    400, 405, 410, 415, 420, 425, 430, 435, 436.5, 438, 439.5, 441, 442.5, 444, 445.5, 447, 448.5,
    450, 451.5, 453, 454.5, 456, 457.5, 459, 460.5, 462, 463.5, 465, 470, 475, 480, 485, 490, 495,
    500,
  ],
  starts: [
    [1, 10, 500],
    [1.5, 5, 450],
  ],
  certified: [1.5543827178, 4.0888321754, 4.5154121844e2],
  certifiedSd: [1.5408051163e-2, 4.6803020753e-2, 4.6800518816e-2],
  certifiedSumOfSquares: 1.4635887487e-3,
};

/** Those NIST calls of higher difficulty. Source: NIST StRD, read in public copies. */
export const HIGHER: readonly NistProblem[] = [
  thurber,
  mgh09,
  mgh10,
  boxBod,
  rat42,
  rat43,
  eckerle4,
  bennett5,
];
