import { type Construction, fill, gap, type LayerSpec, sheet } from './construction.ts';

const board = sheet('gypsum', 0.0127);
const paper = sheet('kraft-paper', 0.0003);
const strand = sheet('strand', 0.011);
const siding = sheet('siding', 0.013);
const wall = (...layers: readonly LayerSpec[]): Construction => ({ place: 'wall', layers, source: 'loads.framed' });
const massive = (...layers: readonly LayerSpec[]): Construction => ({
  place: 'wall',
  layers,
  source: 'loads.massive',
});

/** Walls and doors as they are found. Sources: `loads.framed`, `loads.massive`. */
export const walls = {
  'wall-empty': wall(
    board,
    gap(0.089, 'wall', [0.28, 0.23, 0.18]),
    sheet('board-sheathing', [0.022, 0.02, 0.018]),
    sheet('siding', [0.016, 0.014, 0.013]),
  ),
  'wall-thin': wall(
    board,
    fill('old-wool', [0.057, 0.053, 0.048], 0.2, [0.045, 0.053, 0.06]),
    sheet('siding', [0.019, 0.016, 0.013]),
  ),
  'wall-r11': wall(board, paper, fill('batt', 0.089, [0.18, 0.23, 0.27], [0.038, 0.042, 0.05]), strand, siding),
  'wall-r19': wall(board, paper, fill('batt', 0.14, [0.16, 0.2, 0.25], [0.042, 0.045, 0.05]), strand, siding),
  'wall-r20-continuous': wall(
    board,
    paper,
    fill('batt', 0.14, [0.18, 0.22, 0.26], [0.038, 0.042, 0.046]),
    strand,
    sheet('extruded-foam', [0.038, 0.025, 0.019]),
    siding,
  ),
  'wall-stone': massive(sheet('plaster', 0.013), sheet('brick', [0.32, 0.23, 0.2], [0.7, 0.77, 0.9])),
  'wall-cellulose': wall(
    board,
    fill('cellulose', 0.089, [0.18, 0.23, 0.27], [0.038, 0.041, 0.046]),
    sheet('board-sheathing', 0.019),
    siding,
  ),
  'wall-sawdust': wall(
    sheet('ceiling-board', 0.016),
    fill('sawdust', 0.095, 0.18, [0.055, 0.065, 0.08]),
    sheet('board-sheathing', 0.019),
    siding,
  ),
  'wall-log': massive(sheet('solid-wood', [0.25, 0.2, 0.15])),
  'wall-straw': massive(
    sheet('earth-plaster', 0.03),
    fill('straw', [0.46, 0.4, 0.36], undefined, [0.057, 0.065, 0.08]),
    sheet('lime-plaster', 0.03),
  ),
  'wall-cob': massive(sheet('earth-plaster', 0.02), sheet('cob', [0.6, 0.5, 0.4], [0.5, 0.65, 0.8])),
  'wall-block': massive(sheet('block', 0.194, [0.55, 0.8, 1.2]), sheet('stucco', 0.019)),
  'wall-block-foam': massive(
    board,
    fill('white-foam', [0.058, 0.044, 0.032]),
    sheet('block', 0.194),
    sheet('stucco', 0.019),
  ),
  'wall-concrete-foam': massive(
    board,
    sheet('white-foam', [0.07, 0.057, 0.045]),
    sheet('concrete', 0.15),
    fill('white-foam', [0.07, 0.057, 0.045]),
    sheet('stucco', 0.01),
  ),
  'wall-panel': wall(
    board,
    sheet('strand-inside', 0.011),
    fill('white-foam', [0.165, 0.143, 0.115], [0.03, 0.05, 0.08], [0.035, 0.036, 0.038]),
    strand,
    siding,
  ),
  'door-wood': wall(sheet('solid-wood', [0.04, 0.028, 0.02])),
} as const satisfies Readonly<Record<string, Construction>>;
