import type { Plan, TradeResults } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import { cutLength } from './cutLength.ts';
import { laidSheets } from './laidSheets.ts';

/** One length or bag, and what is cut from it in order; what is left comes last. */
export type StraightCut = {
  readonly from: string;
  readonly cuts: readonly { readonly piece: string; readonly what: string; readonly length: number }[];
};

/** m from which what is left of a bag is kept. */
const keptLeast = 1;

/**
 * Round duct from its lengths, flexible duct from its bags, and pipe, conduit, channel and timber from theirs, each as it is
 * cut. Empty until they are laid out.
 */
export function straightCuts(plan: Pick<Plan, 'trades'>, units: System): StraightCut[] {
  // What is kept of sheets was named first.
  let kept = laidSheets(plan).flatMap((l) => l.sheet.rests.filter((r) => r.remnant !== undefined)).length;
  return [...ductCuts(plan, units), ...lengthCuts(plan, units)].map(({ from, cuts, rest, keep }) => ({
    from,
    cuts: [
      ...cuts,
      ...(rest > 0.005
        ? [{ piece: '', what: keep ? `left over: keep as K${++kept}` : 'left over', length: rest }]
        : []),
    ],
  }));
}

/** A length with what is left of it, and whether that is worth a name. */
type WithRest = StraightCut & { readonly rest: number; readonly keep: boolean };

function ductCuts(plan: Pick<Plan, 'trades'>, units: System): WithRest[] {
  const cut = plan.trades.materials?.cut;
  if (!cut?.ok) return [];
  const { pipes, bags, names } = cut.value;
  const name = (id: string): string => names[id.replace(/ whole$/, '')] ?? id;
  return [
    ...pipes.flatMap(({ diameter, plan: { bars } }) => {
      const hands = bars.map((b) => (b.stock === 'length' ? undefined : name(b.stock)));
      return barCuts(bars, `Round metal duct ${cutLength(diameter, units)}`, counted(hands, 'length'), name);
    }),
    ...bags.flatMap(({ diameter, plan: { coils } }) => {
      const hands = coils.map((c) => (c.from === undefined ? undefined : name(c.from)));
      const from = counted(hands, 'bag');
      return coils.map(
        (coil, i): WithRest => ({
          from: `Flexible duct ${cutLength(diameter, units)}, ${from[i]}`,
          cuts: coil.pieces.map((p) => ({
            piece: name(p.run),
            what: p.parts > 1 ? `cut, part ${p.part} of ${p.parts}: splice` : 'cut',
            length: p.length,
          })),
          rest: coil.rest,
          keep: coil.rest >= keptLeast,
        }),
      );
    }),
  ];
}

function lengthCuts(plan: Pick<Plan, 'trades'>, units: System): WithRest[] {
  const list = plan.trades.materials?.list;
  if (!list?.ok) return [];
  return list.value.straight.flatMap(({ what, plan: { bars }, names, sold }) => {
    const several = Object.keys(sold).length > 1;
    const name = (id: string): string => names[id] ?? id;
    // What it is made for or comes with stands on the list.
    const short = what.replace(/, (with|dry|as)\b.*$/, '');
    return [...new Set(bars.map((b) => b.stock))].flatMap((stock) => {
      const length = sold[stock];
      const own = bars.filter((b) => b.stock === stock);
      const noun = several && length !== undefined ? `${cutLength(length, units)} length` : 'length';
      const hands = own.map(() => (length === undefined ? name(stock) : undefined));
      return barCuts(own, short, counted(hands, noun), name);
    });
  });
}

type Bars = Extract<TradeResults['materials']['cut'], { ok: true }>['value']['pipes'][number]['plan']['bars'];

/** Lengths as they are cut; those that are cut alike and leave nothing to keep stand in one row. */
function barCuts(bars: Bars, what: string, from: readonly string[], name: (id: string) => string): WithRest[] {
  const cutAlike = (a: Bars[number], b: Bars[number] | undefined): boolean =>
    b !== undefined &&
    a.stock === b.stock &&
    b.rest.remnant === undefined &&
    a.pieces.length === b.pieces.length &&
    a.pieces.every((p, k) => p.length === b.pieces[k]?.length && name(p.piece) === name(b.pieces[k]?.piece ?? ''));
  return bars.flatMap((bar, i): WithRest[] => {
    if (i > 0 && cutAlike(bar, bars[i - 1]) && bar.rest.remnant === undefined) return [];
    const differs = bars.findIndex((b, k) => k > i && !(cutAlike(b, bar) && b.rest.remnant === undefined));
    const last = (differs < 0 ? bars.length : differs) - 1;
    const each = last > i ? ' from each' : '';
    return [
      {
        from: `${what}, ${last > i ? fromTo(from[i] ?? '', from[last] ?? '') : from[i]}`,
        cuts: bar.pieces.map((p) => ({
          piece: name(p.piece),
          what: `${p.length > bar.length - 0.001 ? 'a whole length' : 'cut'}${each}`,
          length: p.length,
        })),
        rest: bar.rest.length,
        keep: bar.rest.remnant !== undefined,
      },
    ];
  });
}

/** `length 1 of 9` and `length 8 of 9` as `lengths 1 to 8 of 9`. */
const fromTo = (first: string, last: string): string =>
  first.replace(/(length|bag)? ?(\d+) of (\d+)$/, (_, noun: string | undefined, one: string, all: string) => {
    const [, until = one] = /(\d+) of \d+$/.exec(last) ?? [];
    return `${noun === undefined ? '' : `${noun}s `}${one} to ${until} of ${all}`;
  });

/** `bag 1 of 3` of what is bought, `at hand, “from the shed”` of what is there, each counted among its like. */
function counted(hands: readonly (string | undefined)[], noun: string): string[] {
  return hands.map((hand, i) => {
    const at = hands.slice(0, i + 1).filter((h) => h === hand).length;
    const all = hands.filter((h) => h === hand).length;
    if (hand === undefined) return `${noun} ${at} of ${all}`;
    return `at hand, “${hand}”${all > 1 ? `, ${at} of ${all}` : ''}`;
  });
}
