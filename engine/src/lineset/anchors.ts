import type { ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { bracketBolts, exposures, windForce, windPressure } from './kernels/wind.ts';

/** Share of its ultimate pull that an anchor is counted on for. Source: `lineset.anchor`. */
export const anchorShare = 0.25;
const gravity = 9.80665;

type Hold = ResolvedProject['routes']['lineset']['hold'];
type Box = ResolvedProject['candidates'][string]['outdoorUnit'];

/**
 * kg that pull at each upper bolt of two brackets: the unit with its ice, and a gust that lifts it as far from the wall
 * as its middle lies. Source: `lineset.wind`.
 */
export function boltPull(hold: Hold, box: Box, s: Scenario, rec: WorkingRecorder): number {
  if ('missing' in hold.wind) return unresolved('missing', hold.wind.path);
  rec.given('v', hold.wind);
  const pressure = windPressure(hold.wind.high, exposures[s.choice(hold.land)]);
  const area = s.of(box.width) * s.of(box.height);
  const force = windForce(pressure, area);
  rec.step('F', 'table', { p: pressure, A: area }, force, 'N', 'lineset.wind');
  const [out, apart] = [s.of(hold.out), s.of(hold.apart)];
  if (!(apart > 0)) return unresolved('missing', hold.apart.path);
  const ice = 'missing' in hold.ice ? 0 : hold.ice.high;
  const mass = s.of(box.mass) + ice;
  const { pull } = bracketBolts(mass, out, apart, { force, arm: out });
  const inputs = { m: mass, F: force, g: gravity, out, apart };
  rec.step('m_bolt', '(m * g * out + F * out) / apart / 2 / g', inputs, pull / gravity, 'kg', 'lineset.wind');
  return pull / gravity;
}

/** m of a panel beyond the bolts, on every side. Common practice, no source. */
const backingBeyond = 0.1;

/** The panel behind a bracket, m: as wide as the unit, whose feet its arms stand under, and from bolt to bolt, with an edge round both. */
export const backingOf = (hold: Hold, unitWidth: number, s: Scenario): { width: number; height: number } => ({
  width: unitWidth + 2 * backingBeyond,
  height: s.of(hold.apart) + 2 * backingBeyond,
});
