import { margin, type Paper } from './paper.ts';
import { element, type Svg, words } from './svg.ts';

/** What stands at the head of a sheet: the project, what is drawn, and a line on how. */
export type SheetHead = { readonly project: string; readonly drawn: string; readonly how: string };

/** Letters and rules that every sheet shares: black on white, it has to survive a copy of a copy. mm. */
const sharedStyle = [
  'text{font-family:"DejaVu Sans",Arial,Helvetica,sans-serif;font-size:2.6px;fill:#000}',
  '.title{font-size:5px;font-weight:700}.small{font-size:2.4px}.head text{font-weight:700}.caution{font-weight:700}',
  '.frame,.hollow{fill:none;stroke:#000;stroke-width:.35}.full{fill:#000}.hollow{fill:#fff}',
  '.rule{stroke:#000;stroke-width:.12}.bar{stroke:#000;stroke-width:.4}.tick{stroke:#000;stroke-width:.25}',
].join('');

/** mm that the head takes. */
export const headHeight = 15;

/** A whole sheet as a file's text: sized in millimetres, framed, with its head. Equal parts give equal bytes. */
export function sheetSvg(
  paper: Paper,
  { project, drawn, how }: SheetHead,
  { style, scale }: { readonly style: string; readonly scale: string },
  ...parts: readonly Svg[]
): string {
  const height = Math.round(paper.height * 10) / 10;
  const sheet = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${paper.width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${paper.width} ${height}`,
      'data-scale': scale,
    },
    element('title', {}, words(`${project}: ${drawn}`)),
    element('style', {}, { svg: sharedStyle + style }),
    element('rect', { x: 0, y: 0, width: paper.width, height: paper.height, fill: '#fff' }),
    element('rect', {
      x: margin - 3,
      y: margin - 3,
      width: paper.width - 2 * margin + 6,
      height: paper.height - 2 * margin + 6,
      class: 'frame',
    }),
    element(
      'g',
      { class: 'sheet-head' },
      element('text', { x: margin, y: margin + 4.5, class: 'title' }, words(shortened(project, 44))),
      element('text', { x: margin, y: margin + 9 }, words(drawn)),
      element('text', { x: margin, y: margin + 12.6 }, words(how)),
    ),
    ...parts,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${sheet.svg}\n`;
}

export const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 1)}…` : text;

const noteHeight = 3.6;

/** mm that so many notes take. */
export const notesHeight = (notes: readonly string[]): number => notes.length * noteHeight;

/** Lines at the foot of a sheet; the first `cautions` of them in bold. */
export const notesAt = (y: number, notes: readonly string[], cautions: number): Svg[] =>
  notes.map((note, i) =>
    element(
      'text',
      { x: margin, y: y + (i + 0.8) * noteHeight, class: i < cautions ? 'small caution' : 'small' },
      words(note),
    ),
  );
