import { type Construction, type Ends, fill, gap, type LayerSpec, sheet } from './construction.ts';

const board = sheet('gypsum', 0.0127);
const paper = sheet('kraft-paper', 0.0003);
const joists = [0.08, 0.1, 0.13] as const;
const ceiling = (...layers: readonly LayerSpec[]): Construction => ({
  place: 'ceiling',
  layers,
  source: 'loads.framed',
});
const roof = (...layers: readonly LayerSpec[]): Construction => ({ place: 'roof', layers, source: 'loads.framed' });
const deck = [sheet('board-sheathing', 0.016), sheet('shingles', 0.006)] as const;

/** Ceilings under an attic, and slopes with rooms below. Source: `loads.framed`. */
export const overhead = {
  'ceiling-bare': ceiling(sheet('ceiling-board', [0.022, 0.016, 0.01])),
  'ceiling-r7': ceiling(board, fill('old-wool', [0.07, 0.063, 0.055], joists, [0.046, 0.05, 0.054])),
  'ceiling-r11': ceiling(board, paper, fill('batt', 0.089, joists, [0.039, 0.045, 0.055])),
  'ceiling-r19': ceiling(board, paper, fill('batt', 0.15, joists, [0.038, 0.044, 0.055])),
  'ceiling-r30': ceiling(
    board,
    paper,
    crossed('batt', 0.14, [0.042, 0.046, 0.055]),
    fill('batt', [0.1, 0.1, 0.09], undefined, [0.042, 0.046, 0.055]),
  ),
  'ceiling-r49': ceiling(
    board,
    crossed('cellulose', 0.14, [0.039, 0.04, 0.045]),
    fill('cellulose', [0.215, 0.2, 0.17], undefined, [0.039, 0.04, 0.045]),
  ),
  'ceiling-sawdust': ceiling(
    sheet('ceiling-board', 0.016),
    fill('sawdust', [0.12, 0.1, 0.089], joists, [0.06, 0.065, 0.08]),
  ),
  'roof-batt': roof(
    board,
    paper,
    fill('batt', 0.14, [0.08, 0.1, 0.14], [0.04, 0.044, 0.05]),
    gap(0.03, 'roof', 0.1),
    ...deck,
  ),
  'roof-foam': roof(board, fill('closed-foam', [0.15, 0.13, 0.11], [0.08, 0.1, 0.13], [0.023, 0.024, 0.026]), ...deck),
} as const satisfies Readonly<Record<string, Construction>>;

/** The part of a fill that lies between the joists. */
function crossed(material: 'batt' | 'cellulose', thickness: number, conductivity: Ends): LayerSpec {
  return { ...sheet(material, thickness, conductivity), framing: joists };
}
