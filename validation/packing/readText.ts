type Row = { readonly at: number; readonly words: readonly string[]; readonly numbers: readonly number[] };

/** Lines that are not blank, with the numbers they begin with; words after those are remarks. */
function rowsOf(text: string): Row[] {
  return text
    .replace(/^\uFEFF/, '')
    .replaceAll('\u001A', '')
    .split(/\r\n|\n|\r/)
    .flatMap((line, i): Row[] => {
      const words = line.split(/[\s,;]+/).filter((w) => w !== '');
      if (words.length === 0 || /^(#|%|\/\/)/.test(words[0] ?? '')) return [];
      const end = words.findIndex((w) => !/^\d*\.?\d+(e[+-]?\d+)?$/i.test(w));
      return [{ at: i + 1, words, numbers: words.slice(0, end < 0 ? words.length : end).map(Number) }];
    });
}

/** Goes through rows one by one, and says at which line the file ends too soon. */
class Rows {
  readonly #rows: readonly Row[];
  #next = 0;
  constructor(rows: readonly Row[]) {
    this.#rows = rows;
  }
  get left(): Row | undefined {
    return this.#rows[this.#next];
  }
  take(what: string, counts: readonly number[]): Row {
    const row = this.#rows[this.#next++];
    if (!row) throw new Error(`line ${this.#rows.at(-1)?.at ?? 1}: the file ends before ${what}`);
    if (!counts.includes(row.numbers.length))
      throw new Error(
        `line ${row.at}: “${row.words.join(' ')}” has ${row.numbers.length} numbers where ${what} should stand`,
      );
    return row;
  }
  many(count: number, what: string, counts: readonly number[]): Row[] {
    return Array.from({ length: count }, (_, i) => this.take(`${what} ${i + 1} of ${count}`, counts));
  }
}

/** Several bins with a name each: capacity, how many, fewest bins known; the lengths, one on each line. */
function barsByName(rows: Rows, many: number): unknown[] {
  return Array.from({ length: many }, () => {
    const name = rows.take('a name', [0, 1]).words.join(' ');
    const [capacity, count, best] = rows.take(`capacity, pieces and bins of ${name}`, [2, 3]).numbers;
    const items = rows.many(count ?? 0, `piece of ${name}:`, [1]).flatMap((r) => r.numbers);
    return { name, capacity, items, ...(best === undefined ? {} : { optimum: best, how_known: 'looked up' }) };
  });
}

/** Both numbers of the head on one line: whichever is that of the lengths below is how many. */
function barsUnder([head, ...below]: readonly Row[], name: string): unknown {
  const [a, b] = head?.numbers ?? [];
  if (below.length !== a && below.length !== b)
    throw new Error(`line ${head?.at}: ${a} or ${b} lengths should follow, ${below.length} do`);
  const wrong = below.find((r) => r.numbers.length !== 1);
  if (wrong) throw new Error(`line ${wrong.at}: “${wrong.words.join(' ')}” should be one length`);
  return { name, capacity: below.length === a ? b : a, items: below.flatMap((r) => r.numbers) };
}

/** Width and height; with a third number its value; with four how many, then the value; with five least, most, value; with six name, size, least, most, value. */
function pieceOf({ at, numbers }: Row, i: number): unknown {
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = numbers;
  if (numbers.length === 6) return { id: a, w: b, h: c, count: d > 0 ? d : e };
  if (numbers.length === 5) return { id: i, w: a, h: b, count: d };
  if (numbers.length === 4) return { id: i, w: a, h: b, count: c };
  if (numbers.length === 3 && c !== a * b)
    throw new Error(`line ${at}: is ${c} how many, or a value? As JSON, “count” says it`);
  return { id: i, w: a, h: b };
}

function oneSheet(rows: Rows, name: string, count: number): unknown {
  const [w, h] = rows.take('width and height of the sheet', [2]).numbers;
  return { name, sheet: { w, h }, pieces: rows.many(count, 'piece', [2, 3, 4, 5, 6]).map(pieceOf) };
}

/** Classes of sheets: of each instance the class, how many pieces, its number, the sheet, and then the pieces. */
function sheetsByClass(rows: Rows): unknown[] {
  const all: unknown[] = [];
  while (rows.left) {
    const [kind] = rows.take('the class', [1]).numbers;
    const [count] = rows.take('how many pieces', [1]).numbers;
    const [, number] = rows.take('the number of the instance', [2]).numbers;
    all.push(oneSheet(rows, `class ${kind}, ${count} pieces, ${number}`, count ?? 0));
  }
  return all;
}

/** A text of one of the published forms as the data of a case file. Throws what is wrong, with its line. */
export function readText(text: string, name: string): unknown {
  const all = rowsOf(text);
  const [first, second] = all;
  if (!first) throw new Error('the file is empty');
  const rows = new Rows(all);
  if (/class/i.test(first.words.join(' '))) return { instances: sheetsByClass(rows) };
  if (first.numbers.length === 2 && second?.numbers.length === 1) return barsUnder(all, name);
  const [count] = rows.take('how many pieces', [1]).numbers;
  if (second?.numbers.length === 0) return { instances: barsByName(rows, count ?? 0) };
  if (second?.numbers.length === 2) return ended(rows, oneSheet(rows, name, count ?? 0));
  if (second?.numbers.length !== 1)
    throw new Error(
      `line ${second?.at ?? first.at}: the length of a bar, or width and height of a sheet, should stand here`,
    );
  const [capacity] = rows.take('the length of a bar', [1]).numbers;
  const pieces = rows.many(count ?? 0, 'piece', [1, 2]).map((r) => r.numbers);
  const lengths = pieces.map(([length]) => length);
  return ended(rows, { name, capacity, lengths, demand: pieces.map(([, n]) => n ?? 1) });
}

function ended(rows: Rows, read: unknown): unknown {
  if (rows.left) throw new Error(`line ${rows.left.at}: “${rows.left.words.join(' ')}” stands after the last piece`);
  return read;
}
