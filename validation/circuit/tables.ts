// biome-ignore-all lint/suspicious/noApproximativeNumericConstant: numbers stand as they are printed
/** What the tables are held against, as printed. See README.md. */

// A of copper in the 60, 75 and 90 °C columns
export const ampacities: readonly (readonly [number, number, number, number])[] = [
  [14, 15, 20, 25],
  [12, 20, 25, 30],
  [10, 30, 35, 40],
  [8, 40, 50, 55],
  [6, 55, 65, 75],
  [4, 70, 85, 95],
  [3, 85, 100, 115],
  [2, 95, 115, 130],
  [1, 110, 130, 145],
  [0, 125, 150, 170],
];

// top of the range of air °C, factors of the three columns (nothing where it may not be used), law behind them
export const factors: readonly (readonly [number, readonly (number | undefined)[], readonly (number | undefined)[]])[] =
  [
    [25, [1.08, 1.05, 1.04], [1.0801, 1.0541, 1.0408]],
    [30, [1, 1, 1], [1, 1, 1]],
    [35, [0.91, 0.94, 0.96], [0.9129, 0.9428, 0.9574]],
    [40, [0.82, 0.88, 0.91], [0.8165, 0.8819, 0.9129]],
    [45, [0.71, 0.82, 0.87], [0.7071, 0.8165, 0.866]],
    [50, [0.58, 0.75, 0.82], [0.5774, 0.7454, 0.8165]],
    [55, [0.41, 0.67, 0.76], [0.4082, 0.6667, 0.7638]],
    [60, [undefined, 0.58, 0.71], [undefined, 0.5774, 0.7071]],
    [65, [undefined, 0.47, 0.65], [undefined, 0.4714, 0.6455]],
    [70, [undefined, 0.33, 0.58], [undefined, 0.3333, 0.5774]],
  ];

// conductors side by side, factor
export const together: readonly (readonly [number, number])[] = [
  [3, 1],
  [4, 0.8],
  [6, 0.8],
  [7, 0.7],
  [9, 0.7],
  [10, 0.5],
  [20, 0.5],
  [21, 0.45],
  [30, 0.45],
  [31, 0.4],
  [40, 0.4],
];

// gauge, mm, mm², Ω/km at 20 °C, at 75 °C, Ω for 1000 ft at 75 °C, as printed for stranded conductors
export const conductors: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [18, 1.0237, 0.823, 20.948, 25.476, 7.7651, 7.95],
  [16, 1.2908, 1.3087, 13.175, 16.022, 4.8835, 4.99],
  [14, 1.6277, 2.0809, 8.2855, 10.0764, 3.0713, 3.14],
  [12, 2.0525, 3.3088, 5.2108, 6.3371, 1.9316, 1.98],
  [10, 2.5882, 5.2612, 3.2771, 3.9855, 1.2148, 1.24],
  [8, 3.2636, 8.3656, 2.061, 2.5065, 0.764, 0.778],
  [6, 4.1154, 13.3018, 1.2962, 1.5763, 0.4805, 0.491],
  [4, 5.1894, 21.1506, 0.8152, 0.9914, 0.3022, 0.308],
  [3, 5.8273, 26.6705, 0.6465, 0.7862, 0.2396, 0.245],
  [2, 6.5437, 33.6308, 0.5127, 0.6235, 0.19, 0.194],
  [1, 7.3481, 42.4077, 0.4066, 0.4944, 0.1507, 0.154],
  [0, 8.2515, 53.4751, 0.3224, 0.3921, 0.1195, 0.122],
  [-1, 9.2658, 67.4309, 0.2557, 0.311, 0.0948, 0.0967],
];
export const solid: readonly (readonly [number, number])[] = [
  [14, 3.07],
  [12, 1.93],
  [10, 1.21],
  [8, 0.764],
];

// compressor A, all else A, least ampacity, most protection by 1.75 and its size, by 2.25 and its size
export const compressors: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [19.2, 1.1, 25.1, 34.7, 30, 44.3, 40],
  [12, 0.8, 15.8, 21.8, 20, 27.8, 25],
  [9.5, 0.6, 12.475, 17.225, 15, 21.975, 20],
  [24.5, 1.5, 32.125, 44.375, 40, 56.625, 50],
];

// A, m one way, V, gauge, V lost, %, V lost with the printed resistance
export const drops: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [20, 30, 240, 10, 4.7825, 1.993, 4.8819],
  [25.1, 25, 240, 10, 5.0017, 2.084, 5.1056],
  [16, 20, 240, 12, 4.0558, 1.69, 4.1575],
  [10, 40, 120, 12, 5.0697, 4.225, 5.1969],
  [150, 2, 51.2, 0, 0.2353, 0.46, 0.2402],
];

// protection A, gauge of the grounding conductor
export const grounds: readonly (readonly [number, number])[] = [
  [15, 14],
  [20, 12],
  [30, 10],
  [40, 10],
  [60, 10],
  [100, 8],
  [200, 6],
];

// air °C, A left of 12, 10 and 8 gauge with insulation for 90 °C
export const inHotAir: readonly (readonly [number, readonly (readonly [number, number])[]])[] = [
  [
    60,
    [
      [12, 21.3],
      [10, 28.4],
      [8, 39.05],
    ],
  ],
  [
    50,
    [
      [12, 24.6],
      [10, 32.8],
      [8, 45.1],
    ],
  ],
  [
    70,
    [
      [12, 17.4],
      [10, 23.2],
      [8, 31.9],
    ],
  ],
];

// trade size of thin-walled tubing, square inches inside and of them 40 % (table 4)
export const tubing: readonly (readonly [string, number, number])[] = [
  ['1/2', 0.304, 0.122],
  ['3/4', 0.533, 0.213],
  ['1', 0.864, 0.346],
  ['1 1/4', 1.496, 0.598],
];
