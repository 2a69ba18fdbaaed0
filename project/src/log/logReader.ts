import { type ClockReader, clockReader, type LogClock } from './clock.ts';
import { type DateOrder, momentOf } from './dates.ts';
import type { Dialect } from './dialect.ts';
import { countFault, type Faults } from './faults.ts';
import { Growing, type LogTable } from './logTable.ts';
import { cellsOf, numberAt } from './numberAt.kernel.ts';
import { inOrder } from './order.ts';
import type { LogColumns } from './propose.ts';
import { type LogQuantity, logQuantityIds, quantityOf, unitOf } from './quantities.ts';

/** How a log is to be read, once nothing is open: `zone` is standard time's distance from Greenwich, hours. */
export type LogReading = {
  readonly dialect: Dialect;
  readonly order: DateOrder;
  readonly clock: LogClock;
  readonly zone: number;
  readonly columns: LogColumns;
};

/** Takes a log's text in pieces of any size, and gives the table at the end. */
export type LogReader = { readonly add: (text: string) => void; readonly end: () => LogTable };

type Column = {
  readonly id: LogQuantity;
  readonly at: number;
  readonly times: number;
  readonly plus: number;
  readonly counts: 'meter' | 'each' | undefined;
  readonly least: number;
  readonly most: number;
  readonly values: Growing<Float32Array>;
  /** The last reading of a meter and its moment. */
  meter: number;
  metered: number;
};

const blank = /^(|-+|nan|null|none|na|n\/a|unknown|unavailable|off)$/i;
/** Cells a row may have. */
const widest = 256;
/** W: a house's meter cannot leap by more. */
const leapMost = 100_000;
const single = (length: number): Float32Array => new Float32Array(length);
/** Moments and lines need more digits than values. */
const double = (length: number): Float64Array => new Float64Array(length);

export function logReader(reading: LogReading): LogReader {
  const read = new RowsReader(reading);
  let rest = '';
  let begun = false;
  return {
    add(text) {
      const whole = rest + (begun ? text : text.replace(/^\uFEFF/, ''));
      begun = true;
      rest = whole.slice(read.lines(whole));
    },
    end() {
      if (rest !== '') read.lines(`${rest}\n`);
      return read.table();
    },
  };
}

class RowsReader {
  private readonly reading: LogReading;
  private readonly columns: readonly Column[];
  private readonly clock: ClockReader;
  private readonly time = new Growing(double);
  private readonly lineOfRow = new Growing(double);
  private readonly faults: Faults = {};
  private readonly starts = new Int32Array(widest);
  private readonly ends = new Int32Array(widest);
  private readonly needed: number;
  private line = 0;
  private rows = 0;

  constructor(reading: LogReading) {
    this.reading = reading;
    const { heads, time } = reading.dialect;
    this.columns = logQuantityIds.flatMap((id) => {
      const column = reading.columns[id];
      const at = column ? heads.indexOf(column.name) : -1;
      if (!column || at < 0) return [];
      const { times, plus = 0, counts } = unitOf(column.unit);
      const { least, most } = quantityOf(id);
      const none = Number.NaN;
      return [{ id, at, times, plus, counts, least, most, values: new Growing(single), meter: none, metered: none }];
    });
    this.clock = clockReader(reading.clock, reading.zone);
    this.needed = Math.max(...time, ...this.columns.map((c) => c.at)) + 1;
  }

  /** Reads all whole lines; gives where the unfinished one begins. */
  lines(text: string): number {
    let from = 0;
    for (let to = text.indexOf('\n'); to >= 0; to = text.indexOf('\n', from)) {
      const end = to > from && text.charCodeAt(to - 1) === 13 ? to - 1 : to;
      this.line++;
      if (this.line >= this.reading.dialect.firstLine && end > from) this.row(text, from, end);
      from = to + 1;
    }
    return from;
  }

  private row(text: string, from: number, to: number): void {
    const { dialect } = this.reading;
    this.rows++;
    const cells = cellsOf(text, from, to, dialect.delimiter.charCodeAt(0), this.starts, this.ends);
    if (cells < this.needed) {
      countFault(this.faults, 'short-row', this.line);
      return;
    }
    const moment = this.moment(text);
    if (moment === undefined) return;
    this.time.push(moment);
    this.lineOfRow.push(this.line);
    const mark = dialect.decimal.charCodeAt(0);
    for (const column of this.columns) {
      const fast = numberAt(text, this.starts[column.at] ?? 0, this.ends[column.at] ?? 0, mark);
      const raw = Number.isNaN(fast) ? this.slowly(text, column) : fast;
      column.values.push(column.counts ? this.powerOf(column, raw, moment) : this.valueOf(column, raw));
    }
  }

  private moment(text: string): number | undefined {
    const written = this.reading.dialect.time.map((c) => text.slice(this.starts[c], this.ends[c])).join(' ');
    const moment = momentOf(written, this.reading.order);
    if (!moment) {
      countFault(this.faults, 'no-moment', this.line, written);
      return undefined;
    }
    if (moment.offset !== undefined) return moment.seconds - moment.offset + this.reading.zone * 3600;
    const standard = this.clock.standard(moment.seconds);
    if (standard === undefined) countFault(this.faults, 'no-such-hour', this.line, written);
    return standard;
  }

  /** What is no plain number: nothing, a number with its unit or an exponent, or a fault. */
  private slowly(text: string, column: Column): number {
    const cell = text.slice(this.starts[column.at], this.ends[column.at]).trim();
    if (blank.test(cell)) return Number.NaN;
    const { decimal } = this.reading.dialect;
    const plain =
      decimal === ',' ? cell.replaceAll('.', '').replace(',', '.') : cell.replaceAll(/(?<=\d),(?=\d{3})/g, '');
    const number = Number(/^[-+]?[\d.]+([eE][-+]?\d+)?(?=\s*[^\d\s]*$)/.exec(plain)?.[0] ?? 'x');
    if (Number.isNaN(number)) countFault(this.faults, 'not-a-number', this.line, cell);
    return number;
  }

  private valueOf(column: Column, raw: number): number {
    if (Number.isNaN(raw)) return raw;
    const value = raw * column.times + column.plus;
    // Cheap sensors say 85 at power-up and -127 when a wire is off (common practice).
    const broken = quantityOf(column.id).dimension === 'temperature' && (raw === -127 || raw === 85);
    if (value >= column.least && value <= column.most && !broken) return value;
    countFault(this.faults, 'impossible', this.line, `${column.id} ${raw}`);
    return Number.NaN;
  }

  /** The mean power since the row before, from energy. */
  private powerOf(column: Column, raw: number, moment: number): number {
    if (Number.isNaN(raw)) return raw;
    const passed = moment - column.metered;
    const energy = (column.counts === 'meter' ? raw - column.meter : raw) * column.times;
    column.meter = raw;
    column.metered = moment;
    if (!(passed > 0)) return Number.NaN;
    const power = (energy * 3600) / passed;
    if (column.counts === 'meter' && energy < 0) {
      countFault(this.faults, 'meter-fell', this.line, column.id);
      return Number.NaN;
    }
    if (power <= leapMost && power >= -leapMost) return power;
    countFault(this.faults, 'meter-leapt', this.line, column.id);
    return Number.NaN;
  }

  table(): LogTable {
    const spans = this.columns.filter((c) => c.counts !== undefined).map((c) => c.id);
    const columns = Object.fromEntries(this.columns.map((c) => [c.id, c.values.whole()]));
    const read = {
      kind: 'log',
      time: this.time.whole(),
      columns,
      spans,
      step: 0,
      rows: this.rows,
      faults: this.faults,
      asks: [],
    } as const;
    return inOrder(read, this.lineOfRow.whole());
  }
}
