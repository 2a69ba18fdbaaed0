import pdfmake, { type PutIn } from 'pdfmake/build/pdfmake.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { fonts } from '../../test/paper.ts';
import { quickFont } from './quickFont.ts';

let font: PutIn;
const words =
  `AVATAR|Toward |office |ruffle|fjord|W/(m2K)|R-49,|To.|L2T1-a_B |Yes!"|house’s |ft² |24,000 |53.4°. |3/16".|(11 304 |+7 T`.split(
    '|',
  );
/** All their pairs, but in no word as it stands. */
const texts = words.map((word) => `${word}|${[...word].reverse().join('')}`).join('|');
beforeAll(async () => {
  pdfmake.virtualfs.writeFileSync('normal', fonts.normal);
  pdfmake.setFonts({ paper: { normal: 'normal', bold: 'normal' } });
  const definition = { content: '.', defaultStyle: { font: 'paper' } };
  font = (await pdfmake.createPdf(definition, { bufferPages: false }).getStream()).provideFont('paper', false, false);
  quickFont(font, texts);
});

/** The library's own places of a whole word. */
const placesOf = (word: string) =>
  font.font.layout(word).positions.map(({ xAdvance, yAdvance, xOffset, yOffset }) => ({
    xAdvance: xAdvance * font.scale,
    yAdvance: yAdvance * font.scale,
    xOffset: xOffset * font.scale,
    yOffset: yOffset * font.scale,
  }));

describe('words laid out from pairs', () => {
  it('stand as the library lays them out whole, those with letters that melt into one as well', () => {
    for (const word of words) {
      const { glyphs, positions, advanceWidth } = font.layoutRun(word);
      const whole = placesOf(word);
      expect(glyphs.length, word).toBe(whole.length);
      expect(
        positions.map(({ advanceWidth: _own, ...place }) => place),
        word,
      ).toEqual(whole);
      expect(advanceWidth, word).toBe(whole.reduce((sum, p) => sum + p.xAdvance, 0));
    }
  });

  it('are kerned: a pair that draws together is narrower than its letters', () => {
    const wide = (text: string) => font.font.layout(text, undefined, 'latn').advanceWidth * font.scale;
    expect(font.layoutRun('AVAV').advanceWidth).toBeLessThan(2 * wide('A') + 2 * wide('V'));
  });
});
