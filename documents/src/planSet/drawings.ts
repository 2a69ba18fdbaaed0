import type { Sheet } from '../sheet/drawing.ts';
import { type Block, points } from './block.ts';

/** An empty page of the size of each drawing, with a bookmark and a line in the contents; the drawing goes onto it. */
export const drawingPages = (sheets: readonly Sheet[]): Block[] =>
  sheets.map(({ file, title, svg }) => {
    const { width, height } = sizeOf(svg);
    return {
      // The sheet has its title drawn on it: this one is for the bookmark and the contents.
      section: [{ id: file, text: title, style: 'unseen', outline: true, tocItem: true }],
      pageSize: { width: points(width), height: points(height) },
      pageMargins: 0,
    };
  });

/** A sheet states its size in mm on its first element. */
export function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const found = /<svg [^>]*width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg);
  if (!found) throw new Error('assert: a sheet states its size in mm');
  return { width: Number(found[1]), height: Number(found[2]) };
}
