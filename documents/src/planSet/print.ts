/// <reference path="./pdfmake.d.ts" />
import { engineVersion } from '@kneewall/engine';
import pdfmake, { type OpenPdf } from 'pdfmake/build/pdfmake.js';
import svgToPdf from 'svg-to-pdfkit';
import { margin, plainPaper } from '../sheet/paper.ts';
import { escaped, plainText } from '../sheet/svg.ts';
import type { Sheet } from '../sheets.ts';
import { type Block, type Margin, type PageSize, points } from './block.ts';
import { sizeOf } from './drawings.ts';
import { leftToRight, printable } from './letters.ts';
import type { PlanSet } from './planSet.ts';
import { quickFont } from './quickFont.ts';
import { quickWrite } from './quickWrite.ts';
import { safeSvg } from './safeSvg.ts';
import { layouts, stylesFor } from './styles.ts';

/** The two files of the font that is put into the paper: upright and bold, as read. */
export type Fonts = { readonly normal: Uint8Array; readonly bold: Uint8Array };

/**
 * A plan set as the bytes of one PDF: searchable, with bookmarks, fonts inside, to be printed at 100 %. Equal sets give
 * equal bytes in Node and in a browser: it carries no date of its own. A sign that the font has no picture of is
 * printed as its number. Rejects only on our own fault.
 */
export async function printPlanSet(set: PlanSet, fonts: Fonts): Promise<Uint8Array<ArrayBuffer>> {
  pdfmake.virtualfs.writeFileSync('normal', fonts.normal);
  pdfmake.virtualfs.writeFileSync('bold', fonts.bold);
  pdfmake.setFonts({ paper: { normal: 'normal', bold: 'bold' } });
  pdfmake.setTableLayouts(layouts);
  // Nothing that a text names is ever fetched or read.
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.localAccessPolicy = () => false;
  const has = await signsOfFont();
  const pageOf = new Map<string, number>();
  const definition = definitionOf(set, (text) => leftToRight(printable(text, has)), pageOf);
  const open = await pdfmake.createPdf(definition, { bufferPages: true }).getStream();
  // One font for the pages and the drawings: it is put into the file once.
  open._fontFamilies.sheet = open.provideFont('paper', false, false);
  open._fontFamilies['sheet bold'] = open.provideFont('paper', true, false);
  drawSheets(open, set.sheets, pageOf, has);
  writeFeet(open, leftToRight(printable(set.foot, has)).join(''));
  // A viewer asks before it scales the page: a drawing shrunk to the paper cannot be measured.
  open._root.data.ViewerPreferences.data.PrintScaling = 'None';
  return bytesOf(open);
}

/** Draws each sheet onto the page kept for it, true to scale, with the set's own font. */
function drawSheets(open: OpenPdf, sheets: readonly Sheet[], pageOf: ReadonlyMap<string, number>, has: Has): void {
  for (const { file, svg } of sheets) {
    open.switchToPage((pageOf.get(file) ?? 0) - 1);
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
}

/** A text of a drawing as it stands from left to right, each piece by itself: the library knows one direction only. */
function inOrder(text: string, has: Has): string {
  const pieces = leftToRight(printable(plainText(text), has)).map(escaped);
  return pieces.length === 1
    ? (pieces[0] ?? '')
    : pieces.map((p) => `<tspan xml:space="preserve">${p}</tspan>`).join('');
}

/** At the foot of every page: which plan, which sheet of how many. */
function writeFeet(open: OpenPdf, foot: string): void {
  const { count } = open.bufferedPageRange();
  for (let index = 0; index < count; index++) {
    open.switchToPage(index);
    // Below the margin the library would start a new page.
    open.page.margins.bottom = 0;
    open
      .font('sheet')
      .fontSize(7)
      .fillColor('#000')
      .text(`${foot}  ·  sheet ${index + 1} of ${count}`, points(margin), open.page.height - points(8.5), {
        lineBreak: false,
      });
  }
}

type Has = (codePoint: number) => boolean;

/** Whether the font has a picture of a sign, asked of the library that prints with it; which is made quicker by the way. */
async function signsOfFont(): Promise<Has> {
  const probe = await pdfmake
    .createPdf({ content: '.', defaultStyle: { font: 'paper' } }, { bufferPages: false })
    .getStream();
  const putIn = probe.provideFont('paper', false, false);
  quickFont(putIn);
  quickWrite(probe._root);
  const { font } = putIn;
  const known = new Map<number, boolean>();
  return (code) => {
    const there = known.get(code) ?? font.hasGlyphForCodePoint(code);
    known.set(code, there);
    return there;
  };
}

function definitionOf(set: PlanSet, pieces: (text: string) => readonly string[], pageOf: Map<string, number>) {
  const paper = plainPaper(set.units);
  const pageSize: PageSize = { width: points(paper.width), height: points(paper.height) };
  const edge = points(margin);
  const pageMargins = [edge, edge, edge, edge + 14] as const;
  return {
    info: { title: set.title, creator: 'Kneewall', producer: `Kneewall ${engineVersion}`, creationDate: new Date(0) },
    version: '1.7',
    language: 'en',
    pageSize,
    pageMargins,
    defaultStyle: { font: 'paper', fontSize: 9, lineHeight: 1.15 },
    styles: stylesFor(set.letters),
    content: onOwnPaper(set.content, pageSize, pageMargins).map((block) => withText(block, pieces)),
    displayTitle: true,
    // Asked of every block once it is placed; no page is broken here.
    pageBreakBefore: ({ id, startPosition }: Placed) => {
      if (id !== undefined) pageOf.set(id, startPosition.pageNumber);
      return false;
    },
  };
}

/**
 * The blocks with those behind a drawing put onto the set's own paper again: the library would go on with the paper of the
 * drawing. A section begins a page by itself.
 */
function onOwnPaper(content: readonly Block[], pageSize: PageSize, pageMargins: Margin): readonly Block[] {
  const laid: Block[] = [];
  let behind: Block[] | undefined;
  const put = () => {
    if (behind?.length) laid.push({ section: behind, pageSize, pageMargins });
  };
  for (const block of content) {
    if ('section' in block) {
      put();
      laid.push(block);
      behind = [];
    } else if (behind === undefined) laid.push(block);
    else behind.push(behind.length === 0 && 'pageBreak' in block ? { ...block, pageBreak: undefined } : block);
  }
  put();
  return laid;
}

/** A block as the library has laid it out; pages count from 1. */
type Placed = {
  readonly id?: string;

  readonly startPosition: { readonly pageNumber: number };
};

/**
 * A copy in which every text is made of pieces that print, whatever anybody typed. Drawings have their own. `inText`: what
 * stands in the text of a block.
 */
function withText(value: unknown, pieces: (text: string) => readonly string[], inText = false): unknown {
  if (typeof value === 'string') {
    const parts = pieces(value);
    if (parts.length > 1) return parts.map((text) => ({ text, noWrap: true }));
    return inText ? { ...unadorned, text: parts[0] } : parts[0];
  }
  if (Array.isArray(value)) return value.map((v) => withText(v, pieces, inText));
  if (value === null || typeof value !== 'object') return value;
  const words = inText && 'text' in value && typeof value.text === 'string' ? pieces(value.text) : [];
  if (words.length === 1) return { ...unadorned, ...value, text: words[0] };
  // What contents and bookmarks repeat has to be a text.
  const repeated = 'tocItem' in value || 'outline' in value;
  return Object.fromEntries(
    Object.entries(value).map(([key, held]) => [
      key,
      holdsText.has(key) ? withText(held, pieces, key === 'text' && !repeated) : held,
    ]),
  );
}

/**
 * What no style of ours gives a text, said of each: the library would look for every one of these in all that a word
 * stands in, which takes longer than anything else.
 */
const unadorned = {
  font: 'paper',
  noWrap: false,
  italics: false,
  fontFeatures: '',
  characterSpacing: 0,
  decoration: '',
  decorationColor: '',
  decorationStyle: '',
  decorationThickness: '',
  background: '',
  linkToPage: '',
  linkToDestination: '',
  opacity: 1,
  sup: false,
  sub: false,
  preserveLeadingSpaces: false,
  preserveTrailingSpaces: false,
  wordBreak: 'normal',
  leadingIndent: 0,
};

/** The keys of a block below which texts stand; all others hold names and numbers of ours. */
const holdsText = new Set(['text', 'ul', 'columns', 'stack', 'table', 'body', 'section', 'toc', 'title']);

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
