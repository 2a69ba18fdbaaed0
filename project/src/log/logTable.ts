import type { Faults } from './faults.ts';
import type { LogQuantity } from './quantities.ts';

/** What rows say, seven digits of it: more than any sensor knows, in half the memory. */
export type LogValues = Float32Array | Float64Array;

/** A log as read: one row a moment in order. Seconds of local standard time from 1970; NaN where a row does not say. */
export type LogTable = {
  readonly kind: 'log';
  readonly time: Float64Array;
  /** °C, W, m³/s, W/m², m/s, share. Of energies, the mean power since the row before. */
  readonly columns: Readonly<Partial<Record<LogQuantity, LogValues>>>;
  /** Columns that hold since the row before, not at the moment. */
  readonly spans: readonly LogQuantity[];
  /** Seconds between most rows. */
  readonly step: number;
  /** Rows in the file, taken or not. */
  readonly rows: number;
  readonly faults: Faults;
  /** What looks wrong in it as a whole, in words. */
  readonly asks: readonly string[];
};

export const isLogTable = (x: unknown): x is LogTable =>
  x !== null && typeof x === 'object' && (x as { kind?: unknown }).kind === 'log';

const pieceRows = 65_536;

/** A column that grows by pieces, so that nothing is copied until the end. */
export class Growing<A extends LogValues> {
  private readonly pieces: A[] = [];
  private readonly made: (length: number) => A;
  length = 0;

  constructor(made: (length: number) => A) {
    this.made = made;
  }

  push(value: number): void {
    const at = this.length % pieceRows;
    if (at === 0) this.pieces.push(this.made(pieceRows));
    const piece = this.pieces.at(-1);
    if (piece) piece[at] = value;
    this.length++;
  }

  /** All of it in one; the pieces are let go. */
  whole(): A {
    const all = this.made(this.length);
    let at = 0;
    for (let piece = this.pieces.shift(); piece; piece = this.pieces.shift()) {
      all.set(piece.subarray(0, Math.min(pieceRows, this.length - at)), at);
      at += pieceRows;
    }
    return all;
  }
}
