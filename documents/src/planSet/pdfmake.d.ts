/**
 * What of the printing library is used here; it brings no types of its own. Its build for browsers runs in Node too, and
 * packs the same bytes there; it has no way to a disk.
 */
declare module 'pdfmake/build/pdfmake.js' {
  /** Where a letter stands, in thousandths of its size. */
  export type Place = { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number; advanceWidth: number };
  /** A word laid out. */
  export type Laid = {
    readonly glyphs: readonly { readonly advanceWidth: number }[];
    readonly positions: readonly Place[];
    readonly advanceWidth: number;
  };
  /** A font put into a document. */
  export type PutIn = {
    readonly font: {
      hasGlyphForCodePoint(code: number): boolean;
      layout(text: string, features: undefined, script: string): Laid;
    };
    readonly scale: number;
    layoutRun(this: PutIn, text: string, features?: unknown): Laid;
  };
  /** A part of a document, written line by line. */
  export type Written = {
    write(this: Written, chunk: string | Uint8Array): void;
    finalize(this: Written): void;
  };
  /** A document of the library below, not yet ended. */
  export type OpenPdf = {
    provideFont(family: string, bold: boolean, italics: boolean): PutIn;
    readonly _root: Written & {
      readonly data: { readonly ViewerPreferences: { readonly data: Record<string, unknown> } };
    };
    readonly _fontFamilies: Record<string, PutIn>;
    readonly page: { readonly height: number; readonly margins: { bottom: number } };
    bufferedPageRange(): { readonly count: number };
    font(name: string): OpenPdf;
    fontSize(points: number): OpenPdf;
    fillColor(colour: string): OpenPdf;
    text(text: string, x: number, y: number, options: { readonly lineBreak: boolean }): OpenPdf;
    /** Counts from 0. */
    switchToPage(index: number): void;
    on(event: 'data', take: (chunk: Uint8Array) => void): void;
    on(event: 'end', done: () => void): void;
    on(event: 'error', fail: (error: unknown) => void): void;
    end(): void;
  };
  const pdfmake: {
    readonly virtualfs: { writeFileSync(name: string, bytes: Uint8Array): void };
    setFonts(fonts: Readonly<Record<string, { readonly normal: string; readonly bold: string }>>): void;
    setTableLayouts(layouts: Readonly<Record<string, unknown>>): void;
    setUrlAccessPolicy(allow: (url: string) => boolean): void;
    localAccessPolicy: (path: string) => boolean;
    createPdf(definition: unknown, options: { readonly bufferPages: boolean }): { getStream(): Promise<OpenPdf> };
  };
  export default pdfmake;
}

declare module 'svg-to-pdfkit' {
  export default function svgToPdf(
    open: import('pdfmake/build/pdfmake.js').OpenPdf,
    svg: string,
    x: number,
    y: number,
    options: {
      readonly width: number;
      readonly height: number;
      readonly fontCallback: (family: string, bold: boolean, italic: boolean) => string;
      readonly warningCallback: (warning: string) => void;
    },
  ): void;
}
