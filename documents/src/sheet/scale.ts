import type { System } from '@kneewall/project';

/** A drawing scale: one on paper is `ratio` in the house. */
export type Scale = { readonly ratio: number; readonly words: string };

const scales: Readonly<Record<System, readonly Scale[]>> = {
  us: [
    { ratio: 24, words: '1/2 in = 1 ft (1:24)' },
    { ratio: 32, words: '3/8 in = 1 ft (1:32)' },
    { ratio: 48, words: '1/4 in = 1 ft (1:48)' },
    { ratio: 64, words: '3/16 in = 1 ft (1:64)' },
    { ratio: 96, words: '1/8 in = 1 ft (1:96)' },
    { ratio: 192, words: '1/16 in = 1 ft (1:192)' },
  ],
  si: [20, 25, 50, 75, 100, 200].map((ratio) => ({ ratio, words: `1:${ratio}` })),
};

/** The largest usual scale at which so many metres fit into so many millimetres, else the next whole hundred that does. */
export function scaleFor(units: System, metres: readonly [number, number], field: readonly [number, number]): Scale {
  const least = Math.max((1000 * metres[0]) / field[0], (1000 * metres[1]) / field[1]);
  const ratio = Math.max(300, Math.ceil(least / 100) * 100);
  return scales[units].find((s) => s.ratio >= least) ?? { ratio, words: `1:${ratio}` };
}
