import type { Chosen, Given, Range } from '@kneewall/project';

type Triple = readonly [low: number, likely: number, high: number];
const range = ([low, likely, high]: Triple): Range => ({ low, likely, high });

/**
 * Air-to-air U of common constructions, W/(m²K), framing counted, as such walls and ceilings are found: common
 * practice and code history, from memory. Source: `loads.constructions`.
 */
const common: Readonly<Record<string, Triple>> = {
  'wall-empty': [1.1, 1.25, 1.4],
  'wall-thin': [0.7, 0.85, 1],
  'wall-r11': [0.45, 0.52, 0.62],
  'wall-r19': [0.3, 0.35, 0.42],
  'wall-r20-continuous': [0.22, 0.26, 0.31],
  'wall-stone': [1.4, 2, 2.6],
  'wall-log': [0.45, 0.6, 0.8],
  'wall-block': [1.8, 2.2, 2.8],
  'wall-block-foam': [0.45, 0.6, 0.8],
  'wall-concrete-foam': [0.22, 0.28, 0.35],
  'wall-panel': [0.2, 0.25, 0.32],
  'wall-straw': [0.12, 0.16, 0.22],
  'ceiling-bare': [2.2, 3, 3.6],
  'ceiling-r7': [0.6, 0.72, 0.9],
  'ceiling-r11': [0.42, 0.5, 0.62],
  'ceiling-r19': [0.26, 0.31, 0.4],
  'ceiling-r30': [0.17, 0.2, 0.26],
  'ceiling-r49': [0.11, 0.125, 0.16],
  'ceiling-sawdust': [0.4, 0.55, 0.75],
  'roof-batt': [0.25, 0.32, 0.42],
  'roof-foam': [0.18, 0.24, 0.32],
  'floor-bare': [1.5, 1.9, 2.2],
  'floor-r11': [0.38, 0.48, 0.6],
  'floor-r19': [0.26, 0.31, 0.4],
  'floor-r30': [0.17, 0.21, 0.27],
  slab: [2.5, 3, 3.5],
  'door-wood': [2, 2.6, 3.2],
};

export type EraPart = 'wall' | 'ceiling' | 'floor' | 'window';
const eras: Readonly<Record<string, Readonly<Record<EraPart, Triple>>>> = {
  'before-1940': { wall: [0.9, 1.2, 1.4], ceiling: [0.8, 1.6, 2.5], floor: [1.5, 1.9, 2.2], window: [4.8, 5.2, 5.7] },
  '1940-1965': { wall: [0.7, 1, 1.3], ceiling: [0.5, 0.65, 0.85], floor: [1.5, 1.8, 2.1], window: [4.8, 5.2, 5.7] },
  '1966-1980': { wall: [0.45, 0.55, 0.7], ceiling: [0.3, 0.4, 0.55], floor: [0.7, 1.3, 1.9], window: [2.8, 3.1, 4.8] },
  '1981-1992': { wall: [0.4, 0.5, 0.6], ceiling: [0.2, 0.28, 0.35], floor: [0.3, 0.42, 0.55], window: [2.6, 2.8, 3.2] },
  '1993-2006': {
    wall: [0.33, 0.42, 0.5],
    ceiling: [0.16, 0.2, 0.25],
    floor: [0.28, 0.34, 0.45],
    window: [1.9, 2.1, 2.8],
  },
  'since-2007': {
    wall: [0.25, 0.3, 0.38],
    ceiling: [0.11, 0.14, 0.18],
    floor: [0.19, 0.23, 0.3],
    window: [1.7, 1.9, 2.1],
  },
};

/** The U of a common construction as an input of its own, so that it counts among the unknowns. */
export const commonU = (chosen: Chosen): Given => ({
  ...range(common[chosen.choice] ?? [0.5, 0.5, 0.5]),
  path: chosen.path,
  kind: 'u-value',
  known: 'assumed',
});

/**
 * The U that houses of an age have. Where nobody said the age, it spans from the newest to the oldest, and is one
 * unknown for all parts: they are of the same age. Source: `loads.eras` (common practice and code history, from memory).
 */
export function eraU(era: Chosen, part: EraPart): Given {
  const triple = (id: string): Triple => eras[id]?.[part] ?? [0.5, 0.5, 0.5];
  const own = triple(era.choice);
  if (era.known === 'entered') return { ...range(own), path: `${era.path}#${part}`, kind: 'u-value', known: 'assumed' };
  return { ...spanned(own, Object.keys(eras).map(triple)), path: era.path, kind: 'u-value', known: 'assumed' };
}

/** The assumed answer's likely value, between the lowest and the highest likely value that any answer has. */
function spanned([low, likely, high]: Triple, all: readonly Triple[]): Range {
  const others = all.map(([, middle]) => middle);
  return { low: Math.min(low, ...others), likely, high: Math.max(high, ...others) };
}

/** Windows by their glass: U, share of the sun at normal incidence, panes. Source: `loads.glazing` (from memory). */
export const glass: Readonly<Record<string, { readonly u: Triple; readonly sun: Triple; readonly panes: 1 | 2 }>> = {
  single: { u: [4.8, 5.3, 5.9], sun: [0.72, 0.78, 0.84], panes: 1 },
  double: { u: [2.6, 2.9, 3.3], sun: [0.6, 0.67, 0.74], panes: 2 },
  'double-coated': { u: [1.6, 1.9, 2.2], sun: [0.3, 0.45, 0.58], panes: 2 },
  triple: { u: [1, 1.3, 1.7], sun: [0.3, 0.42, 0.5], panes: 2 },
  door: { u: [2, 2.6, 3.2], sun: [0, 0, 0], panes: 1 },
};

/** An entered value where there is one, else the glass's, as an input of its own. */
export const glassGiven = (glazing: Chosen, what: 'u' | 'sun'): Given => ({
  ...range((glass[glazing.choice] ?? glass.double ?? { u: [3, 3, 3], sun: [0, 0, 0], panes: 2 })[what]),
  path: `${glazing.path}#${what}`,
  kind: what === 'u' ? 'u-value' : 'fraction',
  known: 'assumed',
});

/** Share of the sun that passes a covering. Source: `loads.shades` (common practice). */
export const shadeShare: Readonly<Record<string, number>> = { none: 1, curtain: 0.75, blind: 0.6, shutter: 0.2 };

/** Air changes an hour at 50 Pa by what people feel. Source: `loads.draughts` (common practice). */
const draughts: Readonly<Record<string, Triple>> = {
  tight: [2, 3.5, 5],
  fair: [5, 7, 10],
  draughty: [8, 12, 18],
  leaky: [14, 20, 30],
};
/** Where nobody said, it spans from the tightest to the leakiest. */
export function draughtGiven(draught: Chosen): Given {
  const own = draughts[draught.choice] ?? [8, 12, 18];
  return {
    ...(draught.known === 'entered' ? range(own) : spanned(own, Object.values(draughts))),
    path: draught.path,
    kind: 'air-changes',
    known: 'assumed',
  };
}
