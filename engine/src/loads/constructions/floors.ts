import { type Construction, fill, type LayerSpec, sheet } from './construction.ts';

const boards = sheet('floor-board', 0.022);
const paper = sheet('kraft-paper', 0.0003);
const joists = [0.08, 0.1, 0.13] as const;
const floor = (...layers: readonly LayerSpec[]): Construction => ({ place: 'floor', layers, source: 'loads.framed' });

/** Floors over a crawl space, and the slab on the ground. Sources: `loads.framed`, `loads.massive`. */
export const floors = {
  'floor-bare': floor(sheet('floor-board', [0.035, 0.022, 0.015])),
  'floor-r11': floor(boards, paper, fill('batt', 0.089, joists, [0.042, 0.051, 0.068])),
  'floor-r19': floor(boards, paper, fill('batt', 0.15, joists, [0.042, 0.049, 0.064])),
  'floor-r30': floor(boards, paper, fill('batt', 0.235, joists, [0.042, 0.049, 0.062])),
  slab: {
    place: 'ground',
    layers: [sheet('tile', 0.003), sheet('concrete', [0.2, 0.15, 0.1])],
    source: 'loads.massive',
  },
} as const satisfies Readonly<Record<string, Construction>>;
