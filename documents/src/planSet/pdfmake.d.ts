/**
 * What of the printing library is used here; it brings no types of its own. Its build for browsers runs in Node too, and
 * packs the same bytes there; it has no way to a disk.
 */
declare module 'pdfmake/build/pdfmake.js' {
  /** Where a letter stands, in thousandths of its size. */
  export type Place = { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number; advanceWidth: number };
  /** A word laid out. */
  export type Laid = {
    readonly glyphs: readonly { readonly advanceWidth: number; readonly codePoints: readonly number[] }[];
    readonly positions: readonly Place[];
    readonly advanceWidth: number;
  };
  /** A font put into a document. */
  export type PutIn = {
    readonly font: {
      hasGlyphForCodePoint(code: number): boolean;
      layout(text: string, features?: undefined, script?: string): Laid;
    };
    readonly scale: number;
    /** By which a page calls it. */
    readonly id: string;
    /** Thousandths of the letters' size, from the foot of a line. */
    readonly ascender: number;
    readonly descender: number;
    ref(): unknown;
    /** A text's pictures by their numbers in this document, and where they stand; they are put into the document. */
    encode(text: string): [pictures: string[], places: Place[]];
    layout(text: string, features: undefined, onlyWidth: true): { readonly advanceWidth: number };
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
    readonly page: { readonly height: number; readonly fonts: Record<string, unknown> };
    readonly outline: { addItem(title: string, options: { readonly expanded: boolean }): unknown };
    _font: PutIn;
    /** Ends the page before. */
    addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): OpenPdf;
    addContent(operators: string): OpenPdf;
    addNamedDestination(name: string, kind: 'XYZ', x: number, y: number, zoom: null): void;
    goTo(x: number, y: number, width: number, height: number, name: string): void;
    fontSize(points: number): OpenPdf;
    fillColor(colour: string): OpenPdf;
    text(text: string, x: number, y: number, options: { readonly lineBreak: boolean }): OpenPdf;
    on(event: 'data', take: (chunk: Uint8Array) => void): void;
    on(event: 'end', done: () => void): void;
    on(event: 'error', fail: (error: unknown) => void): void;
    end(): void;
  };
  const pdfmake: {
    readonly virtualfs: { writeFileSync(name: string, bytes: Uint8Array): void };
    setFonts(fonts: Readonly<Record<string, { readonly normal: string; readonly bold: string }>>): void;
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
