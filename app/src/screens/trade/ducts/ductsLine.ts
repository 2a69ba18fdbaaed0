import type { AirCurves } from '@kneewall/engine';

type Point = AirCurves['system'][number];

/** Points drawn between two that were solved. */
const between = 6;

/**
 * The ducts' curve for drawing, up to a pressure: between two solved points it follows the power of flow that joins
 * them, and the piece from no flow the power of the next one.
 */
export function ductsLine(points: readonly Point[], pressureMost: number): Point[] {
  const rising = points.filter((p) => p.flow > 0 && p.pressure > 0);
  const power = (a: Point, b: Point) => Math.log(b.pressure / a.pressure) / Math.log(b.flow / a.flow);
  const drawn = rising.flatMap((b, i) => {
    const [a, next] = [rising[i - 1], rising[i + 1]];
    const n = a ? power(a, b) : next ? power(b, next) : 2;
    const from = a?.flow ?? 0;
    return Array.from({ length: between }, (_, k): Point => {
      const flow = from + ((b.flow - from) * (k + 1)) / between;
      return { flow, pressure: b.pressure * (flow / b.flow) ** n };
    });
  });
  return [{ flow: 0, pressure: 0 }, ...drawn].filter((p) => p.pressure <= pressureMost);
}
