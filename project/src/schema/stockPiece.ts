import { choice, quantity } from './field.ts';

const size = (label: string, help: string, plausible: { min: number; max: number }) =>
  quantity('length', { label, help, neededBy: [], plausible, possible: { above: 0 }, usually: 'measured' });

/** A piece at hand that others can be cut from: left-over sheets, lengths, coils. */
export const pieceToCut = {
  sheet: choice(
    { board: 'A sheet of duct board', metal: 'A sheet of metal', panel: 'A panel of plywood' },
    {
      label: 'Pieces can be cut from it',
      help: 'Whole sheets and left-over ones: the cut plan lays them out first. Lengths of duct: enter kind, diameter and length.',
      neededBy: [],
    },
  ),
  length: size(
    'Length of one piece',
    'Of a sheet its longer side. Of duct, pipe or timber what is straight and sound.',
    {
      min: 0.2,
      max: 16,
    },
  ),
  across: size('Width of one sheet', 'Only what is square and dry.', { min: 0.1, max: 4 }),
  thickness: size('Thickness of a sheet', 'Of duct board. May stay empty where the plan takes only one thickness.', {
    min: 0.0003,
    max: 0.06,
  }),
};
