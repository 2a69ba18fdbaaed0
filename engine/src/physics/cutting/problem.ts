/** One thing wrong with a cutting job, as data: where it stands, what was found and what would do. Words are made elsewhere. */
export type CutProblem = {
  readonly code:
    | 'not-finite'
    | 'not-positive'
    | 'negative'
    | 'not-whole'
    | 'larger-than-stock'
    | 'no-stock'
    | 'no-pieces'
    | 'too-many'
    | 'same-name'
    | 'out-of-table'
    | 'outside-panel'
    | 'overlaps'
    | 'does-not-fit';
  /** Names and places from the job inward, as `['pieces', 3, 'width']`. */
  readonly at: readonly (string | number)[];
  readonly found: number | string;
  readonly allowed?: { readonly min?: number; readonly max?: number };
};

/** Collects problems, so that all of them are told at once. */
export class Checking {
  readonly problems: CutProblem[] = [];

  say(code: CutProblem['code'], at: CutProblem['at'], found: number | string, allowed?: CutProblem['allowed']): false {
    // What is not finite is told as text: a problem is stored and sent like other data.
    const said = typeof found === 'number' && !Number.isFinite(found) ? String(found) : found;
    this.problems.push({ code, at, found: said, ...(allowed ? { allowed } : {}) });
    return false;
  }

  /** A length, area or cost above 0. */
  positive(at: CutProblem['at'], x: number): boolean {
    if (!Number.isFinite(x)) return this.say('not-finite', at, x);
    return x > 0 || this.say('not-positive', at, x, { min: 0 });
  }

  atLeastNought(at: CutProblem['at'], x: number): boolean {
    if (!Number.isFinite(x)) return this.say('not-finite', at, x);
    return x >= 0 || this.say('negative', at, x, { min: 0 });
  }

  /** A number of pieces. */
  count(at: CutProblem['at'], x: number): boolean {
    return this.positive(at, x) && (Number.isInteger(x) || this.say('not-whole', at, x));
  }

  /** What a piece of stock costs and how many there are, where either is said; none on hand is no mistake. */
  stock(at: CutProblem['at'], { cost, count }: { readonly cost?: number; readonly count?: number }): void {
    if (cost !== undefined) this.atLeastNought([...at, 'cost'], cost);
    if (count !== undefined && count !== 0) this.count([...at, 'count'], count);
  }

  /** Every piece by a name of its own, and no more of them than a job may have. */
  pieces(pieces: readonly { readonly id: string; readonly count: number }[]): void {
    this.names(
      ['pieces'],
      pieces.map((p) => p.id),
    );
    const all = pieces.reduce((n, p) => n + p.count, 0);
    if (all > piecesMost) this.say('too-many', ['pieces'], all, { max: piecesMost });
  }

  names(at: CutProblem['at'], ids: readonly string[]): void {
    const seen = new Set<string>();
    for (const id of ids) {
      if (seen.has(id)) this.say('same-name', at, id);
      seen.add(id);
    }
  }
}

/** More pieces in one job are refused: a house needs some dozens. */
const piecesMost = 5000;
/** And kinds of them. */
export const sortsMost = 400;
