import type { Heard } from './causes/likelihood.ts';
import type { ResponseTable } from './causes/table.ts';
import { errorOf, floorOf, methods } from './methods.ts';

type Named = Heard & { readonly id: string };

/** Standard deviations beyond which two readings cannot both be true. */
const apart = 4;

/**
 * Readings that cannot be true beside another: twice the same number, or a pressure that is not the sum of its parts.
 * By reading, the other one. None of a pair is believed more than the other.
 */
export function contradictions(table: ResponseTable, heard: readonly Named[]): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  const group = (h: Named) => table.channels[h.channel]?.group ?? 'pressure';
  /** Without what two readings by one method have in common. */
  const error = (h: Named, shared: boolean) =>
    shared
      ? (methods[h.means].random / Math.sqrt(h.repeats)) * (group(h) === 'temperature' ? 1 : Math.abs(h.value)) +
        floorOf(group(h), h.means)
      : errorOf(group(h), h.means, h.value, h.repeats);
  const mark = (a: Named, b: Named): void => {
    found[a.id] ??= b.id;
    found[b.id] ??= a.id;
  };
  heard.forEach((a, i) => {
    for (const b of heard.slice(i + 1))
      if (a.channel === b.channel && !a.baseIn && !b.baseIn) {
        const shared = a.means === b.means;
        if (Math.abs(a.value - b.value) > apart * Math.hypot(error(a, shared), error(b, shared))) mark(a, b);
      }
  });
  const by = (id: string) => heard.find((h) => table.channels[h.channel]?.id === id && found[h.id] === undefined);
  const [all, out, back] = [by('air/static'), by('commissioning/supply-static'), by('commissioning/return-static')];
  const loss = coilDrop(table);
  if (all && out && back && loss !== undefined) {
    const miss = all.value - out.value - back.value - loss;
    if (Math.abs(miss) > apart * Math.hypot(error(all, true), error(out, true), error(back, true))) mark(all, back);
  }
  const filter = by('commissioning/filter-drop');
  if (filter && back && filter.value - back.value > apart * Math.hypot(error(filter, true), error(back, true)))
    mark(filter, back);
  return found;
}

/** Pa of what is added beyond the unit, which the two ends of the static pressure have between them. */
function coilDrop({ base, channels }: ResponseTable): number | undefined {
  const at = (id: string) => base[channels.findIndex((c) => c.id === id)];
  const [all, out, back] = [at('air/static'), at('commissioning/supply-static'), at('commissioning/return-static')];
  return all === undefined || out === undefined || back === undefined ? undefined : all - out - back;
}
