import type { PutIn } from 'pdfmake/build/pdfmake.js';
import { expect, it } from 'vitest';
import { type Block, body, boxed, columnsOf, list, page, table } from '../block.ts';
import { stylesFor } from '../styles.ts';
import { type Page, pagesOf } from './pages.ts';
import type { Setting } from './setting.ts';

/** A font of letters as wide as half their height. */
const font = { id: 'F', ascender: 800, descender: -200 } as PutIn;
const word = (text: string, bold: boolean) => {
  const blanks = (part: RegExp) => 500 * (part.exec(text)?.[0].length ?? 0);
  return { text, bold, width: 500 * text.length, lead: blanks(/^\s+/), trail: blanks(/\s+$/), shown: text };
};
const setting: Setting = {
  face: { fonts: { normal: font, bold: font }, word },
  pieces: (text) => [text],
  looks: stylesFor('plain'),
  contents: [],
  inWords: new WeakMap(),
};
const paper = { width: 300, height: 400, margins: [30, 30, 30, 44] as const };

const laid = (content: readonly Block[]): Page[] => {
  const pages = pagesOf(content, paper, setting);
  for (const { lines } of pages)
    for (const { x, y, line } of lines) {
      expect(y).toBeGreaterThanOrEqual(30);
      expect(y + line.height).toBeLessThanOrEqual(400 - 44 + 1e-6);
      expect(x + line.width).toBeLessThanOrEqual(270 + 1e-6);
    }
  return pages;
};
const wordsOn = ({ lines }: Page): string =>
  lines.map(({ line }) => line.words.map(({ inline }) => inline.word.text).join('')).join('\n');
const count = (n: number) => Array.from({ length: n }, (_, i) => `w${i}`);

it('puts every word of a long paragraph on paper, in order and once, a word longer than a line in parts', () => {
  const text = [...count(900), 'x'.repeat(150), 'end'].join(' ');
  const pages = laid([body(text)]);
  expect(pages.length).toBeGreaterThan(1);
  expect(pages.map(wordsOn).join('').replaceAll(/\s/g, '')).toBe(text.replaceAll(' ', ''));
});

it('repeats the head of a table on each page, parts no row, and cuts only what is higher than a page, losing nothing', () => {
  const long = count(1400).join(' ');
  const rows = [...count(60).map((w) => [w, `${w} a ${w} b ${w} c ${w} d ${w} e`]), ['long', long]];
  const columns = [
    { head: 'No', width: 30 },
    { head: 'Words', width: '*' as const },
  ];
  const pages = laid([table(columns, rows, { title: 'Title' })]);
  const texts = pages.map(wordsOn);
  const short = texts.slice(
    0,
    texts.findIndex((t) => t.includes('long')),
  );
  for (const text of short) expect(text).toContain('Title');
  for (const w of count(60)) expect(short.filter((t) => t.includes(`${w} a`) !== t.includes(`${w} e`))).toEqual([]);
  expect(texts.join('').replaceAll(/\s/g, '')).toContain(long.replaceAll(' ', ''));
});

it('keeps together what may not be parted, begins parts on a page of their own, and leaves no page empty', () => {
  const together: Block = { stack: [body('first'), list(count(12)), body('last')], unbreakable: true };
  const drawing: Block = {
    section: [{ text: 'Drawn', style: 'unseen' }],
    pageSize: { width: 300, height: 400 },
    pageMargins: 30,
  };
  const pages = laid([body(count(200).join(' ')), together, together, page('Part'), drawing, page('After'), body('x')]);
  const texts = pages.map(wordsOn);
  expect(texts.filter((t) => t.includes('first') !== t.includes('last'))).toEqual([]);
  expect(texts.every((t) => t !== '')).toBe(true);
  expect(texts.slice(-3).map((t) => t.split('\n')[0])).toEqual(['Part', 'Drawn', 'After']);
});

it('goes on in columns over the next page, and draws a line round a card', () => {
  const items = count(90).map((w) => `${w} is here`);
  const pages = laid([body(count(200).join(' ')), columnsOf(items, 2), boxed([body('card')])]);
  const all = pages.map(wordsOn).join('\n');
  for (const item of items) expect(all.split(`${item}\n`).length, item).toBe(2);
  expect(pages.at(-1)?.rules.length).toBe(4);
});
