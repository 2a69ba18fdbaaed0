import type { BoardBox, Side } from '@kneewall/engine/physics';

const inch = 0.0254;
const sides: readonly Side[] = ['left', 'bottom', 'right', 'top'];

/** Numbers from 0 to 1 that come out the same everywhere. */
export function numbersFrom(seed: number): () => number {
  let x = seed;
  return () => {
    x = (x * 48_271) % 2_147_483_647;
    return x / 2_147_483_647;
  };
}

/** A box with up to three holes, drawn by the generator: invented. */
export function randomBox(n: number, next: () => number): BoardBox {
  const [width, height, length] = [0.15 + 0.45 * next(), 0.15 + 0.4 * next(), 0.3 + 2.4 * next()];
  const openings = Array.from({ length: Math.floor(4 * next()) }, (_, i) => {
    const side = sides[Math.floor(4 * next())] ?? 'top';
    const across = (side === 'left' || side === 'right' ? height : width) * (0.3 + 0.4 * next());
    return {
      id: `hole ${i}`,
      side,
      across,
      along: length * ((i + 0.3 + 0.4 * next()) / 4),
      shape: { kind: 'round' as const, diameter: 0.05 },
    };
  });
  return {
    id: `box ${n}`,
    width,
    height,
    length,
    thickness: ([1, 1.5, 2][Math.floor(3 * next())] ?? 1) * inch,
    openings,
    caps: { start: next() < 0.5, end: next() < 0.5 },
    form: (['one', 'l', 'u', 'four', 'fewest'] as const)[n % 5] ?? 'one',
    sheet: { width: 120 * inch, height: 48 * inch },
  };
}
