import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as canvas from '@napi-rs/canvas';
import type { Fonts } from '../src/planSet/index.ts';

const fontFile = (name: string): Uint8Array =>
  readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

export const fonts: Fonts = { normal: fontFile('DejaVuSansCondensed'), bold: fontFile('DejaVuSansCondensed-Bold') };

// The reader draws with what a browser has; Node gets the same from the canvas package.
Object.assign(globalThis, { Path2D: canvas.Path2D, DOMMatrix: canvas.DOMMatrix, ImageData: canvas.ImageData });

/** A PDF read back by a general reader: the words of each page, its size in points, the bookmarks, and a page as a picture. */
export async function readPdf(bytes: Uint8Array) {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => {
      const page = await pdf.getPage(i + 1);
      const { items } = await page.getTextContent();
      const { width, height } = page.getViewport({ scale: 1 });
      return { width, height, text: items.map((item) => ('str' in item ? item.str : '')).join(' ') };
    }),
  );
  const picture = async (index: number, dpi: number) => {
    const page = await pdf.getPage(index + 1);
    const viewport = page.getViewport({ scale: dpi / 72 });
    const drawn = canvas.createCanvas(Math.round(viewport.width), Math.round(viewport.height));
    const context = drawn.getContext('2d');
    await page.render({ canvasContext: context as never, viewport }).promise;
    return context.getImageData(0, 0, drawn.width, drawn.height);
  };
  const outline = (await pdf.getOutline())?.map((o) => o.title) ?? [];
  const preferences = await pdf.getViewerPreferences();
  return { pages, picture, outline, preferences };
}
