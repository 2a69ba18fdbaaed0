/// <reference path="./pdfmake.d.ts" />
import { engineVersion } from '@kneewall/engine';
import pdfmake, { type OpenPdf, type PutIn } from 'pdfmake/build/pdfmake.js';
import svgToPdf from 'svg-to-pdfkit';
import type { Sheet } from '../sheet/drawing.ts';
import { margin, plainPaper } from '../sheet/paper.ts';
import { escaped, plainText } from '../sheet/svg.ts';
import { type Block, points } from './block.ts';
import { sizeOf } from './drawings.ts';
import { drawPage, pageNumbers } from './laid/drawPage.ts';
import { inlineOf } from './laid/inlines.ts';
import { type Page, pagesOf } from './laid/pages.ts';
import type { Setting, Titled } from './laid/setting.ts';
import { typefaceOf } from './laid/typeface.ts';
import { leftToRight, printable } from './letters.ts';
import type { PlanSet } from './planSet.ts';
import { quickFont } from './quickFont.ts';
import { quickWrite } from './quickWrite.ts';
import { safeSvg } from './safeSvg.ts';
import { stylesFor } from './styles.ts';

/** The two files of the font that is put into the paper: upright and bold, as read. */
export type Fonts = { readonly normal: Uint8Array; readonly bold: Uint8Array };

/** How far a print is: blocks laid on pages, then pages drawn; `part`: what the contents call what is on the page. */
export type PrintProgress = {
  readonly step: 'laying' | 'drawing';
  readonly done: number;
  readonly total: number;
  readonly part: string;
};

/**
 * A plan set as the bytes of one PDF: searchable, with bookmarks, fonts inside, to be printed at 100 %. Equal sets give
 * equal bytes in Node and in a browser: it carries no date of its own. A sign that the font has no picture of is
 * printed as its number. `tell` is called as it goes on. Rejects only on our own fault.
 */
export async function printPlanSet(
  set: PlanSet,
  fonts: Fonts,
  tell: (progress: PrintProgress) => void = () => {},
): Promise<Uint8Array<ArrayBuffer>> {
  const open = await openPdf(set, fonts);
  const normal = open.provideFont('paper', false, false);
  const bold = open.provideFont('paper', true, false);
  for (const font of [normal, bold]) quickFont(font, JSON.stringify(set.content));
  quickWrite(open._root);
  // One font for the pages and the drawings: it is put into the file once.
  Object.assign(open._fontFamilies, { sheet: normal, 'sheet bold': bold });
  const has = signsOf(normal);
  const setting: Setting = {
    face: typefaceOf(normal, bold),
    pieces: (text) => leftToRight(printable(text, has)),
    looks: stylesFor(set.letters),
    contents: titled(set.content),
    inWords: new WeakMap(),
  };
  const pages = pagesOf(set.content, paperOf(set), setting, (done, total) =>
    tell({ step: 'laying', done, total, part: '' }),
  );
  const numbers = pageNumbers(pages);
  const sheets = new Map(set.sheets.map((s) => [numbers.get(s.file), s]));
  const part = partsBy(setting.contents, numbers);
  pages.forEach((page, i) => {
    tell({ step: 'drawing', done: i, total: pages.length, part: part(i + 1) });
    // The first page is there from the start.
    if (i > 0) open.addPage({ size: [page.width, page.height], margin: 0 });
    drawPage(open, page, setting, numbers);
    const sheet = sheets.get(i + 1);
    if (sheet) drawSheet(open, sheet, has);
    drawPage(open, footOf(page, `${set.foot}  ·  sheet `, `${i + 1} of ${pages.length}`, setting), setting, numbers);
  });
  return bytesOf(open);
}

/** A document with one empty page of the set's own paper. */
async function openPdf({ title, units }: PlanSet, fonts: Fonts): Promise<OpenPdf> {
  pdfmake.virtualfs.writeFileSync('normal', fonts.normal);
  pdfmake.virtualfs.writeFileSync('bold', fonts.bold);
  pdfmake.setFonts({ paper: { normal: 'normal', bold: 'bold' } });
  // Nothing that a text names is ever fetched or read.
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.localAccessPolicy = () => false;
  const { width, height } = plainPaper(units);
  const definition = {
    info: { title, creator: 'Kneewall', producer: `Kneewall ${engineVersion}`, creationDate: new Date(0) },
    version: '1.7',
    language: 'en',
    pageSize: { width: points(width), height: points(height) },
    pageMargins: 0,
    defaultStyle: { font: 'paper' },
    content: [],
    displayTitle: true,
  };
  const open = await pdfmake.createPdf(definition, { bufferPages: false }).getStream();
  // A viewer asks before it scales the page: a drawing shrunk to the paper cannot be measured.
  open._root.data.ViewerPreferences.data.PrintScaling = 'None';
  return open;
}

function paperOf({ units }: PlanSet) {
  const { width, height } = plainPaper(units);
  const edge = points(margin);
  return { width: points(width), height: points(height), margins: [edge, edge, edge, edge + 14] as const };
}

/** What the contents name, in order, those of drawings by their files. */
const titled = (content: readonly Block[]): Titled[] => {
  const named = content.flatMap((b) => ('section' in b ? b.section : [b]));
  return named.flatMap((b, i) =>
    'text' in b && b.tocItem && typeof b.text === 'string' ? [{ title: b.text, name: b.id ?? `part ${i}` }] : [],
  );
};

/** What the contents call that which stands on a page. */
function partsBy(contents: readonly Titled[], numbers: ReadonlyMap<string, number>): (page: number) => string {
  const begun = contents.map(({ title, name }) => ({ title, page: numbers.get(name) ?? 0 }));
  return (page) => begun.findLast((b) => b.page > 0 && b.page <= page)?.title ?? '';
}

/** At the foot of every page: which plan, which sheet of how many. */
function footOf({ width, height }: Page, foot: string, sheet: string, setting: Setting): Page {
  const words = [foot, sheet].map((text) =>
    inlineOf(setting.face.word(setting.pieces(text).join(''), false), 7, setting),
  );
  const [first, second] = words;
  if (!first || !second) throw new Error('assert: a foot has words');
  const placed = [
    { x: 0, inline: first },
    { x: first.width, inline: second },
  ];
  const line = { words: placed, width: first.width + second.width, height: first.height, ascent: first.ascent };
  return {
    width,
    height,
    lines: [{ x: points(margin), y: height - points(8.5), line, white: false }],
    rules: [],
    dots: [],
  };
}

/** Draws a sheet onto the page kept for it, true to scale, with the set's own font. */
function drawSheet(open: OpenPdf, { svg }: Sheet, has: Has): void {
  const { width, height } = sizeOf(svg);
  const drawn = safeSvg(svg).replace(/(?<=>)[^<]+(?=<)/g, (text) => inOrder(text, has));
  svgToPdf(open, drawn, 0, 0, {
    width: points(width),
    height: points(height),
    fontCallback: (_family, bold) => (bold ? 'sheet bold' : 'sheet'),
    warningCallback: (warning) => {
      throw new Error(`assert: a sheet cannot be printed: ${warning}`);
    },
  });
}

/** A text of a drawing as it stands from left to right, each piece by itself: the library knows one direction only. */
function inOrder(text: string, has: Has): string {
  const pieces = leftToRight(printable(plainText(text), has)).map(escaped);
  return pieces.length === 1
    ? (pieces[0] ?? '')
    : pieces.map((p) => `<tspan xml:space="preserve">${p}</tspan>`).join('');
}

type Has = (codePoint: number) => boolean;

/** Whether the font has a picture of a sign, asked of the library that prints with it. */
function signsOf({ font }: PutIn): Has {
  const known = new Map<number, boolean>();
  return (code) => {
    const there = known.get(code) ?? font.hasGlyphForCodePoint(code);
    known.set(code, there);
    return there;
  };
}

/** Reads a document to its end. */
function bytesOf(open: OpenPdf): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((done, fail) => {
    const chunks: Uint8Array[] = [];
    open.on('data', (chunk) => chunks.push(chunk));
    open.on('error', fail);
    open.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        whole.set(chunk, at);
        at += chunk.length;
      }
      done(whole);
    });
    open.end();
  });
}
