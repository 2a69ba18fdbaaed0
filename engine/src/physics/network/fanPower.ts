/**
 * W a fan draws at a flow, m³/s, straight between the points of its table that state a power, by rising flow; undefined
 * beyond their ends or where none does.
 */
export function fanPower(
  points: readonly { readonly flow: number; readonly power?: number }[],
  flow: number,
): number | undefined {
  const stated = points.flatMap((p) => (p.power === undefined ? [] : [{ flow: p.flow, power: p.power }]));
  const above = stated.findIndex((p) => p.flow >= flow);
  const [a, b] = [stated[Math.max(0, above - 1)], stated[above]];
  if (!a || !b || flow < a.flow) return undefined;
  return b.flow > a.flow ? a.power + ((flow - a.flow) / (b.flow - a.flow)) * (b.power - a.power) : b.power;
}
