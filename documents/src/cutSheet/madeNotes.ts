import type { Cut } from './cut.ts';

const both = (m: number): string =>
  `${(Math.round((m / 0.0254) * 100) / 100).toFixed(2)} in (${Math.round(m * 1000)} mm)`;

/** How caps and reducers on a sheet are marked out and bent, a sentence each; `cut` are the ids of what is cut from it, `pieces` those of its pieces. */
export function madeNotes(
  { made, ducts }: Pick<Cut, 'made' | 'ducts'>,
  cut: readonly string[],
  pieces: readonly string[],
) {
  const flat = ducts.some(({ id, caps }) =>
    (['start', 'end'] as const).some((e) => caps[e] && pieces.includes(`${id} ${e}`)),
  );
  return [
    ...(flat ? ['Caps: bent up all round, over the outside of the duct’s end; their corners are cut out.'] : []),
    ...made.flatMap((one): string[] => {
      if (!cut.includes(one.id)) return [];
      if (one.what === 'cap') return [`${one.name}: tabs bent up one after the other, over the outside of the duct.`];
      if (one.what === 'unknown') return [];
      if (!one.arcs) return [`${one.name}: its ends are cut to the line; leave 1 in (25 mm) beyond for what joins it.`];
      const { outer, inner, angle } = one.arcs;
      return [
        `${one.name}: about one centre an arc of ${both(outer)} and one of ${both(inner)}, over ${angle.toFixed(1)}°. Rolled with the side that is seen inside; leave 1 in (25 mm) beyond both arcs, snipped into tabs.`,
      ];
    }),
  ];
}
