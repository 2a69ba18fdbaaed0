import { Checking, type CutProblem } from '../problem.ts';

/**
 * Runs of flexible duct from coils of one length, m. `sleeve`: what a splice takes of both ends together. `rule`:
 * `fewest-splices` splices only a run that is longer than a coil; `fewest-coils` splices others too where that saves a
 * coil, and as few as will do. `splicesMost`: a run that has as many is spliced no further to save a coil; a run that is too
 * long for them has more, and is named. `atHand`: lengths that cost nothing and are laid out first.
 */
export type CoilJob = {
  readonly runs: readonly { readonly id: string; readonly length: number }[];
  readonly coil: number;
  readonly sleeve: number;
  readonly rule: 'fewest-splices' | 'fewest-coils';
  readonly splicesMost?: number;
  readonly atHand?: readonly { readonly id: string; readonly length: number; readonly count: number }[];
};

/** One coil, or length at hand of the name `from`: what is cut from it, in order, and what is left. m. */
export type LaidCoil = {
  readonly from?: string;
  readonly length: number;
  readonly pieces: readonly {
    readonly run: string;
    readonly part: number;
    readonly parts: number;
    readonly length: number;
  }[];
  readonly rest: number;
};

export type CoilPlan = {
  readonly coils: readonly LaidCoil[];
  /** Coils that are opened beyond what is at hand. */
  readonly bought: number;
  /** Runs that are spliced, and in how many places; and those of them that have more than may be. */
  readonly splices: readonly { readonly run: string; readonly count: number }[];
  readonly tooMany: readonly string[];
  /** No plan by the rule, a long run in whole coils first, takes fewer coils; where `proved` there are no more of them than that. */
  readonly coilsLeast: number;
  readonly proved: boolean;
  readonly problems: readonly CutProblem[];
};

/** Everything wrong with the numbers of a job. */
export function checkedCoils({ runs, coil, sleeve, splicesMost, atHand = [] }: CoilJob): readonly CutProblem[] {
  const check = new Checking();
  const sound = check.positive(['coil'], coil) && check.atLeastNought(['sleeve'], sleeve);
  if (sound && sleeve >= coil / 2) check.say('does-not-fit', ['sleeve'], sleeve, { max: coil / 2 });
  if (splicesMost !== undefined) check.atLeastNought(['splicesMost'], splicesMost);
  runs.forEach((r, i) => {
    if (check.positive(['runs', i, 'length'], r.length) && sound && r.length > 1000 * coil)
      check.say('too-many', ['runs', i, 'length'], r.length, { max: 1000 * coil });
  });
  atHand.forEach((h, i) => {
    check.positive(['atHand', i, 'length'], h.length);
    check.count(['atHand', i, 'count'], h.count);
  });
  for (const [at, ids] of [
    ['runs', runs.map((r) => r.id)],
    ['atHand', atHand.map((h) => h.id)],
  ] as const)
    check.names([at], ids);
  return check.problems;
}
