import type { OpenPdf } from 'pdfmake/build/pdfmake.js';
import type { Dot, Rule, Standing } from './box.ts';
import { inlineOf, type Setter } from './inlines.ts';
import type { Page } from './pages.ts';
import { thousandths as n } from './typeface.ts';

/** On which page each name stands, counted from 1. */
export type PageNumbers = ReadonlyMap<string, number>;

export const pageNumbers = (pages: readonly Page[]): PageNumbers =>
  new Map(
    pages.flatMap(({ lines }, i) =>
      lines.flatMap(({ entry }) => (entry?.name === undefined ? [] : [[entry.name, i + 1] as const])),
    ),
  );

/** Writes what is laid out onto the page that is open; its letters in one go, so that a page is small and soon written. */
export function drawPage(open: OpenPdf, page: Page, setter: Setter, numbers: PageNumbers): void {
  const lines = page.lines.map((line) =>
    line.pageOf === undefined ? line : numbered(line, line.pageOf, setter, numbers),
  );
  const { normal, bold } = setter.face.fonts;
  for (const font of [normal, bold]) open.page.fonts[font.id] = font.ref();
  for (const part of [rulesShown(page.rules), dotsShown(page.dots), lettersShown(lines, page.height, setter)])
    if (part !== '') open.addContent(part);
  for (const { x, y, line } of lines)
    for (const { x: right, inline } of line.words) {
      if (inline.word.shown !== undefined) continue;
      open._font = inline.word.bold ? bold : normal;
      open.fontSize(inline.size).fillColor('#000');
      open.text(inline.word.text, x + right, y + line.ascent - inline.ascent, { lineBreak: false });
    }
  for (const { x, y, line, entry, to } of page.lines) {
    if (entry?.bookmark !== undefined) open.outline.addItem(entry.bookmark, { expanded: false });
    if (entry?.name !== undefined) open.addNamedDestination(entry.name, 'XYZ', x, y, null);
    if (to !== undefined) open.goTo(x, y, line.width, line.height, to);
  }
}

/** The number of a page, ending where it has to. */
function numbered(standing: Standing, name: string, setter: Setter, numbers: PageNumbers): Standing {
  const size = standing.line.words[0]?.inline.size ?? 0;
  const inline = inlineOf(setter.face.word(String(numbers.get(name) ?? ''), false), size, setter);
  const line = { ...standing.line, words: [{ x: 0, inline }], width: inline.width };
  return { ...standing, x: standing.x - inline.width, line };
}

/** All lines of a page as the file has them. Pages count from the top, letters stand upright only counted from the foot. */
function lettersShown(lines: readonly Standing[], height: number, setter: Setter): string {
  if (lines.length === 0) return '';
  const { normal, bold } = setter.face.fonts;
  const written = ['q', `1 0 0 -1 0 ${n(height)} cm`, 'BT'];
  let [font, colour] = ['', ''];
  for (const { x, y, line, white } of lines) {
    const next = white ? '1 g' : '0 g';
    if (next !== colour) {
      colour = next;
      written.push(colour);
    }
    let run = '';
    let moved = true;
    const close = () => {
      if (run !== '') written.push(`[${run.replaceAll('><', '').replaceAll('<>', '')}] TJ`);
      run = '';
    };
    for (const { x: right, inline } of line.words) {
      const { text, shown, bold: heavy } = inline.word;
      if (text === '') continue;
      if (shown === undefined) {
        // Placed by the library itself: what follows begins anew behind it.
        close();
        moved = true;
        continue;
      }
      const letters = `/${(heavy ? bold : normal).id} ${n(inline.size)} Tf`;
      if (letters !== font) {
        close();
        font = letters;
        written.push(font);
      }
      if (moved) written.push(`1 0 0 1 ${n(x + right)} ${n(height - y - line.ascent)} Tm`);
      moved = false;
      run += shown;
    }
    close();
  }
  return [...written, 'ET', 'Q'].join('\n');
}

/** Rules as wide as each other in one go. */
function rulesShown(rules: readonly Rule[]): string {
  const widths = [...new Set(rules.map((r) => r.width))];
  return widths
    .map((width) => {
      const some = rules.filter((r) => r.width === width);
      const lines = some.map(({ x, y, toX, toY }) => `${n(x)} ${n(y)} m ${n(toX)} ${n(toY)} l`);
      return [`${n(width)} w`, ...lines, 'S'].join('\n');
    })
    .join('\n');
}

/** Four curves stay within three ten thousandths of a circle by this: common practice, no source. */
const bow = 0.5522847498;

function dotsShown(dots: readonly Dot[]): string {
  return dots
    .map(({ x, y, radius: r }) => {
      const k = r * bow;
      const curve = (...p: number[]) => `${p.map(n).join(' ')} c`;
      return [
        `${n(x - r)} ${n(y)} m`,
        curve(x - r, y - k, x - k, y - r, x, y - r),
        curve(x + k, y - r, x + r, y - k, x + r, y),
        curve(x + r, y + k, x + k, y + r, x, y + r),
        curve(x - k, y + r, x - r, y + k, x - r, y),
        'f',
      ].join('\n');
    })
    .join('\n');
}
