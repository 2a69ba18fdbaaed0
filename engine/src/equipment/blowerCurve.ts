import type { BlowerTable } from './result.ts';

type Points = BlowerTable['points'];

/** Share by which flow grows from one held point to the next lower pressure, so that a curve falls all the way. */
const hardly = 1e-4;
/** Share of the set flow down to which a blower is said to hold it. Source: `equipment.constant-airflow`. */
const held = 0.95;

/**
 * The curve of a blower that holds its airflow, by rising flow: at the highest pressure of its table at which the flow
 * still stands, the set flow itself, below it next to nothing more; above it the table's own fall. It holds down to no
 * pressure at all, and up to what the sheet allows (`staticMost`, Pa) where the table ends before it falls.
 */
export function heldAirflow(points: Points, staticMost: number | undefined): Points {
  const byPressure = [...points].sort((a, b) => b.pressure - a.pressure || a.flow - b.flow);
  const [top, low] = [byPressure[0], byPressure.at(-1)];
  if (!top || !low) return [];
  const set = Math.max(...points.map((p) => p.flow));
  const more = top.flow >= held * set && staticMost !== undefined && staticMost > top.pressure;
  const all = [
    ...(more ? [{ flow: top.flow, pressure: staticMost }] : []),
    ...byPressure,
    ...(low.pressure > 0 ? [{ flow: low.flow, pressure: 0 }] : []),
  ];
  let least = 0;
  return all.map((p) => {
    const flow = Math.max(p.flow, least);
    least = flow * (1 + hardly);
    return { ...p, flow };
  });
}
