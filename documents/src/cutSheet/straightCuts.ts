import type { Plan } from '@kneewall/engine';
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

/** Round duct from its lengths, and flexible duct from its bags, each as it is cut. Empty until they are laid out. */
export function straightCuts(plan: Pick<Plan, 'trades'>, units: System): StraightCut[] {
  const cut = plan.trades.materials?.cut;
  if (!cut?.ok) return [];
  const { pipes, bags, names } = cut.value;
  const name = (id: string): string => names[id.replace(/ whole$/, '')] ?? id;
  // What is kept of sheets was named first.
  let kept = laidSheets(plan).flatMap((l) => l.sheet.rests.filter((r) => r.remnant !== undefined)).length;
  const left = (length: number, keep: boolean) =>
    length > 0.005 ? [{ piece: '', what: keep ? `left over: keep as K${++kept}` : 'left over', length }] : [];
  return [
    ...pipes.flatMap(({ diameter, plan: { bars } }) => {
      const from = counted(
        bars.map((b) => (b.stock === 'length' ? undefined : name(b.stock))),
        'length',
      );
      return bars.map(
        (bar, i): StraightCut => ({
          from: `Round metal duct ${cutLength(diameter, units)}, ${from[i]}`,
          cuts: [
            ...bar.pieces.map((p) => ({
              piece: name(p.piece),
              what: p.length > bar.length - 0.001 ? 'a whole length' : 'cut',
              length: p.length,
            })),
            ...left(bar.rest.length, bar.rest.remnant !== undefined),
          ],
        }),
      );
    }),
    ...bags.flatMap(({ diameter, plan: { coils } }) => {
      const from = counted(
        coils.map((c) => (c.from === undefined ? undefined : name(c.from))),
        'bag',
      );
      return coils.map(
        (coil, i): StraightCut => ({
          from: `Flexible duct ${cutLength(diameter, units)}, ${from[i]}`,
          cuts: [
            ...coil.pieces.map((p) => ({
              piece: name(p.run),
              what: p.parts > 1 ? `cut, part ${p.part} of ${p.parts}: splice` : 'cut',
              length: p.length,
            })),
            ...left(coil.rest, coil.rest >= keptLeast),
          ],
        }),
      );
    }),
  ];
}

/** `bag 1 of 3` of what is bought, `at hand, “from the shed”` of what is there, each counted among its like. */
function counted(hands: readonly (string | undefined)[], noun: string): string[] {
  return hands.map((hand, i) => {
    const at = hands.slice(0, i + 1).filter((h) => h === hand).length;
    const all = hands.filter((h) => h === hand).length;
    if (hand === undefined) return `${noun} ${at} of ${all}`;
    return `at hand, “${hand}”${all > 1 ? `, ${at} of ${all}` : ''}`;
  });
}
