import type { System } from '@kneewall/project';

/** Sheets that a builder can print, mm, upright, smallest first. */
const papers: Readonly<
  Record<System, readonly { readonly name: string; readonly width: number; readonly height: number }[]>
> = {
  us: [
    { name: 'Letter', width: 215.9, height: 279.4 },
    { name: 'Tabloid', width: 279.4, height: 431.8 },
  ],
  si: [
    { name: 'A4', width: 210, height: 297 },
    { name: 'A3', width: 297, height: 420 },
  ],
};

/** mm that a printer leaves free all round. */
export const margin = 13;

/** The sheet every house has at hand: Letter or A4. */
export function plainPaper(units: System): Paper {
  const [plain] = papers[units];
  if (!plain) throw new Error('assert: there is no paper');
  return plain;
}

export type Paper = { readonly name: string; readonly width: number; readonly height: number };

/**
 * The smallest sheet on which a drawing has at least so much height beside everything else; the largest, lengthened
 * as far as needed, where none has.
 */
export function paperFor(units: System, others: number, drawingLeast: number): Paper {
  const needed = others + drawingLeast + 2 * margin;
  const fits = papers[units].find((p) => p.height >= needed);
  const largest = papers[units].at(-1);
  if (fits) return fits;
  if (!largest) throw new Error('assert: there is no paper');
  return { ...largest, name: `${largest.name}, lengthened`, height: needed };
}
