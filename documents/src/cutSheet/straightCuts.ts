import type { Plan } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import { cutLength } from './cutLength.ts';

/** One length or bag, and what is cut from it in order; what is left comes last. */
export type StraightCut = {
  readonly from: string;
  readonly cuts: readonly { readonly piece: string; readonly what: string; readonly length: number }[];
};

/** Round duct from its lengths, and flexible duct from its bags, each as it is cut. Empty until they are laid out. */
export function straightCuts(plan: Pick<Plan, 'trades'>, units: System): StraightCut[] {
  const cut = plan.trades.materials?.cut;
  if (!cut?.ok) return [];
  const { pipes, bags, names } = cut.value;
  const name = (id: string): string => names[id.replace(/ whole$/, '')] ?? id;
  const left = (length: number) => (length > 0.005 ? [{ piece: '', what: 'left over', length }] : []);
  return [
    ...pipes.flatMap(({ diameter, plan: { bars } }) =>
      bars.map(
        (bar, i): StraightCut => ({
          from: `Round metal duct ${cutLength(diameter, units)}, length ${i + 1} of ${bars.length}`,
          cuts: [
            ...bar.pieces.map((p) => ({
              piece: name(p.piece),
              what: p.length > bar.length - 0.001 ? 'a whole length' : 'cut',
              length: p.length,
            })),
            ...left(bar.rest.length),
          ],
        }),
      ),
    ),
    ...bags.flatMap(({ diameter, plan: { coils } }) =>
      coils.map(
        (coil, i): StraightCut => ({
          from: `Flexible duct ${cutLength(diameter, units)}, bag ${i + 1} of ${coils.length}`,
          cuts: [
            ...coil.pieces.map((p) => ({
              piece: name(p.run),
              what: p.parts > 1 ? `cut, part ${p.part} of ${p.parts}: splice` : 'cut',
              length: p.length,
            })),
            ...left(coil.rest),
          ],
        }),
      ),
    ),
  ];
}
