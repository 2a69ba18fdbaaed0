import type { Chosen, Given } from '@kneewall/project';
import { range, type Triple } from './triple.ts';

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
