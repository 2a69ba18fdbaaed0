import type { Printer } from '../../plan/printer.ts';
import type { Relaxation } from './spec.ts';
import type { DuctKind, DuctShape } from './stock.ts';

const kindWords: Readonly<Record<DuctKind, string>> = {
  flexible: 'flexible',
  round: 'round metal',
  rectangular: 'rectangular metal',
  board: 'duct board',
};

/** A size as it is put in: how many side by side, and whether on edge. */
export type Sized = { readonly shape: DuctShape; readonly runs: number; readonly onEdge?: boolean };

/** “8 in flexible”, “14 in × 8 in rectangular metal, on edge”, “2 × 6 in round metal side by side”. */
export function sizeWords({ shape, runs, onEdge }: Sized, print: Printer): string {
  const length = (m: number) => print.quantity(m, 'length');
  const size = 'diameter' in shape ? length(shape.diameter) : `${length(shape.width)} × ${length(shape.height)}`;
  const one = `${size} ${kindWords[shape.kind]}${onEdge ? ', on edge' : ''}`;
  return runs > 1 ? `${runs} × ${one} side by side` : one;
}

/** One limit lifted as little as helps, with the section's name and the size that then does. */
export type WayOut = Pick<Relaxation, 'limit' | 'from' | 'to' | 'enough'> & {
  readonly name?: string;
  readonly size?: Sized;
};

/** A way out as an instruction; it says if it is not enough alone. */
export function wayOutWords({ limit, from, to, enough, name, size: sized }: WayOut, print: Printer): string {
  const size = sized ? sizeWords(sized, print) : '';
  const words: Readonly<Record<WayOut['limit'], () => string>> = {
    budget: () =>
      `Free ${print.quantity(to - from, 'pressure')} for the ducts: a larger filter, a higher blower setting, or another unit.`,
    depth: () =>
      `Give “${name}” ${print.quantity(to, 'length')} of height instead of ${print.quantity(from, 'length')}: then ${size} goes in. Joists, rafters and studs are cut only as the local code allows.`,
    width: () =>
      `Give “${name}” ${print.quantity(to, 'length')} of width instead of ${print.quantity(from, 'length')}: then ${size} goes in.`,
    velocity: () =>
      `Accept ${print.quantity(to, 'velocity')} in “${name}” with ${size}: louder than the usual ${print.quantity(from, 'velocity')}.`,
    runs: () => `Run ${size} for “${name}”.`,
    bought: () => `Exchange “${name}”, which is already bought, for ${size}.`,
    flow: () =>
      name === undefined
        ? `Move ${print.quantity(to, 'flow')} in all instead of ${print.quantity(from, 'flow')}: a lower blower setting or a smaller unit.`
        : `Send ${print.quantity(to, 'flow')} through “${name}” instead of ${print.quantity(from, 'flow')}, in ${size}; the rest another way.`,
  };
  return `${words[limit]()}${enough ? '' : ' Not enough alone.'}`;
}

export const takeOne = (ways: number): string =>
  ways === 0
    ? 'No single limit is enough; more than one has to give.'
    : ways === 1
      ? 'This would have to give:'
      : `Take one of these ${ways === 2 ? 'two' : 'three'}:`;

type SpaceSaid = { readonly passes?: 'bay' | 'over'; readonly depth?: number; readonly width?: number };

/** “the bay of “To the bath”, 9 1/4 in deep and 14 1/2 in wide”: what a duct has to pass. */
export function spaceWords(name: string, { passes, depth, width }: SpaceSaid, print: Printer): string {
  const of = passes === 'bay' ? 'the bay of ' : passes === 'over' ? 'the way over the joists of ' : '';
  const sides = [
    ...(depth === undefined ? [] : [`${print.quantity(depth, 'length')} ${passes === 'bay' ? 'deep' : 'high'}`]),
    ...(width === undefined ? [] : [`${print.quantity(width, 'length')} wide`]),
  ];
  return `${of}“${name}”${sides.length > 0 ? `, ${sides.join(' and ')}` : ''}`;
}
