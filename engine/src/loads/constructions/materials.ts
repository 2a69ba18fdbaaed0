/** What a layer is made of: W/(mK), kg/m³, J/(kgK), and how many times still air's resistance to vapour it has. */
export type Material = {
  readonly name: string;
  readonly conductivity: number;
  readonly density: number;
  readonly heat: number;
  readonly mu: number;
};

const made = (name: string, conductivity: number, density: number, heat: number, mu: number): Material => ({
  name,
  conductivity,
  density,
  heat,
  mu,
});

/**
 * Building materials at their usual figures: ISO 10456 tables 3 and 4, ASHRAE Handbook Fundamentals, all from memory.
 * Vapour factors are the dry figures, but the damp ones for wood and board on the outer side, where it is damp when it
 * matters. Siding and board sheathing have joints and hold vapour up by a third of damp wood, and old fills are as they are found:
 * common practice. Source: `loads.materials`.
 */
export const materials = {
  gypsum: made('Gypsum board', 0.16, 800, 1090, 10),
  plaster: made('Plaster', 0.57, 1300, 1000, 10),
  'lime-plaster': made('Lime plaster', 0.8, 1600, 1000, 10),
  'earth-plaster': made('Earth plaster', 0.8, 1600, 1000, 8),
  'ceiling-board': made('Ceiling boards', 0.12, 460, 1600, 50),
  'floor-board': made('Floor boards', 0.12, 500, 1600, 50),
  'solid-wood': made('Solid wood', 0.13, 500, 1600, 50),
  'board-sheathing': made('Board sheathing', 0.12, 460, 1600, 7),
  strand: made('Strand board', 0.13, 650, 1700, 30),
  'strand-inside': made('Strand board, inside', 0.13, 650, 1700, 50),
  siding: made('Wood siding', 0.11, 460, 1600, 7),
  stucco: made('Stucco', 0.72, 1800, 1000, 10),
  brick: made('Solid brick', 0.77, 1700, 900, 16),
  concrete: made('Concrete', 1.4, 2200, 1000, 100),
  block: made('Hollow concrete block', 1, 1300, 1000, 10),
  cob: made('Cob: clay earth with straw', 0.65, 1500, 1000, 10),
  straw: made('Straw bale', 0.065, 110, 1800, 2),
  tile: made('Thin floor finish', 0.17, 1200, 1400, 800),
  batt: made('Mineral-wool batt', 0.042, 15, 840, 1),
  'old-wool': made('Old settled wool', 0.05, 20, 840, 1),
  cellulose: made('Blown cellulose', 0.04, 50, 1600, 2),
  sawdust: made('Old sawdust', 0.065, 190, 1600, 3),
  'white-foam': made('White polystyrene', 0.035, 20, 1450, 60),
  'extruded-foam': made('Extruded polystyrene', 0.029, 30, 1450, 150),
  'closed-foam': made('Closed-cell spray foam', 0.024, 35, 1400, 60),
  'kraft-paper': made('Kraft-paper facing', 0.13, 900, 1400, 12_000),
  shingles: made('Shingles and felt', 0.2, 1100, 1000, 500),
  stud: made('Framing wood', 0.13, 500, 1600, 50),
} as const satisfies Readonly<Record<string, Material>>;

export type MaterialId = keyof typeof materials;
