import { metresOf } from '../whole.ts';
import type { CoilPlan } from './coilJob.ts';

/** A piece of a run, whole nanometres. */
export type Part = { readonly run: string; readonly length: number };

/** A coil, or a length at hand by its name, with the parts cut from it. */
export type Coil = { readonly from?: string; readonly length: number; readonly parts: readonly Part[] };

/** Lays parts one after the other into coils as they come, splicing where one ends within a part. */
export function laidThrough(parts: readonly Part[], coil: number, sleeve: number): Part[][] {
  const coils: Part[][] = [[]];
  let left = coil;
  for (const p of parts) {
    let length = p.length;
    while (length > left) {
      // No shorter than the sleeve: a stub that the splice would eat is left on the coil.
      if (left > sleeve) {
        coils.at(-1)?.push({ run: p.run, length: left });
        length += sleeve - left;
      }
      coils.push([]);
      left = coil;
    }
    coils.at(-1)?.push({ run: p.run, length });
    left -= length;
  }
  return coils;
}

/** The coils as they are told: parts counted run by run, and what is spliced. */
export function toldCoils(
  coils: readonly Coil[],
  splicesMost: number,
): Pick<CoilPlan, 'coils' | 'bought' | 'splices' | 'tooMany'> {
  const parts = new Map<string, number>();
  for (const p of coils.flatMap((c) => c.parts)) parts.set(p.run, (parts.get(p.run) ?? 0) + 1);
  const met = new Map<string, number>();
  const splices = [...parts].flatMap(([run, n]) => (n > 1 ? [{ run, count: n - 1 }] : []));
  return {
    coils: coils.map(({ from, length, parts: own }) => ({
      ...(from === undefined ? {} : { from }),
      length: metresOf(length),
      pieces: own.map((p) => {
        const part = (met.get(p.run) ?? 0) + 1;
        met.set(p.run, part);
        return { run: p.run, part, parts: parts.get(p.run) ?? 1, length: metresOf(p.length) };
      }),
      rest: metresOf(length - own.reduce((sum, p) => sum + p.length, 0)),
    })),
    bought: coils.filter((c) => c.from === undefined).length,
    splices,
    tooMany: splices.flatMap(({ run, count }) => (count > splicesMost ? [run] : [])),
  };
}
