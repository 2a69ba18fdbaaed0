import { airDensity } from '../../physics/air/index.ts';
import type { AirFlows, AirModel, DuctSection } from '../ductwork.ts';
import type { AirAt } from '../networkParts.ts';
import type { DamperPlace } from './places.ts';

/** Pa of a duct with fittings grow about so with flow; between friction alone and fittings alone. */
const growth = 1.9;

/** What a place's way out takes at other flows than those solved: Pa without its damper, and one velocity pressure there. */
export type WayLoss = { readonly loss: number; readonly velocityPressure: number };

/**
 * The loss of every way, unit to room, at the flows wanted of each place (m³/s, in the order of the places), from a
 * solved state with dampers of these losses. Right to rounding where the flows wanted are those solved, whatever lies
 * at the end of a way; near otherwise, which is all an iteration needs.
 */
export function wayLosses(
  model: AirModel,
  places: readonly DamperPlace[],
  solved: { readonly flows: AirFlows; readonly losses: ReadonlyMap<string, number> },
  wanted: readonly number[],
  at: AirAt,
): WayLoss[] {
  const { flows, losses } = solved;
  const ratios = places.map((p, i) => (wanted[i] ?? 0) / placeFlow(p, flows));
  const trunk = trunkRatios(model, places, flows, ratios);
  const now = places.map((p) => dynamicPressure(model, p, flows, at));
  const between = (p: DamperPlace, to: (x: string) => number) =>
    p.trunk.reduce((a, x) => a + (flows.drops[x] ?? 0) * to(x), 0);
  // All ways end at the same two pressures: the largest sum is that difference, and the rest is each place's own.
  const whole = places.reduce((most, p) => Math.max(most, between(p, () => 1) + ownDrop(model, p, flows)), 0);
  return places.map((p, i) => {
    const [ratio, pressure] = [ratios[i] ?? 1, now[i] ?? 0];
    const own = whole - between(p, () => 1) - (losses.get(p.id) ?? 0) * pressure;
    return {
      loss: between(p, (x) => (trunk.get(x) ?? 1) ** growth) + own * ratio ** growth,
      velocityPressure: pressure * ratio ** 2,
    };
  });
}

/** m³/s that the registers behind a place give, of the blower's air. */
export const placeFlow = (p: DamperPlace, flows: AirFlows): number =>
  p.registers.reduce((a, t) => a + (flows.terminals[t] ?? 0), 0);

/** m³/s where the damper sits: in a collar also what leaks behind it. */
const flowAt = (p: DamperPlace, flows: AirFlows): number =>
  p.at === 'collar' ? (flows.sections[p.id] ?? 0) : (flows.terminals[p.id] ?? 0);

/** ρ/2 v² at a place, Pa: the air there is thinner or denser than the blower's, by which its flow is counted. */
function dynamicPressure(model: AirModel, p: DamperPlace, flows: AirFlows, at: AirAt): number {
  const density = airDensity(at.supplyTemperature, model.pressure);
  const faster = airDensity(at.returnTemperature, model.pressure) / density;
  return (density / 2) * ((flowAt(p, flows) * faster) / p.area) ** 2;
}

/** How much more or less each section nearer the unit carries, leaks included. */
function trunkRatios(
  model: AirModel,
  places: readonly DamperPlace[],
  flows: AirFlows,
  ratios: readonly number[],
): Map<string, number> {
  const byId = new Map(model.sections.map((x) => [x.id, x]));
  const carried = new Map<string, number>();
  places.forEach((p, i) => {
    let flow = flowAt(p, flows) * (ratios[i] ?? 1);
    for (const id of p.trunk) {
      flow /= 1 - (byId.get(id)?.leakage ?? 0);
      carried.set(id, (carried.get(id) ?? 0) + flow);
    }
  });
  return new Map([...carried].map(([id, flow]) => [id, flow / (flows.sections[id] ?? flow)]));
}

/** Pa from the near end of a place's collar, its damper included, into the room. */
function ownDrop(model: AirModel, p: DamperPlace, flows: AirFlows): number {
  const [first = ''] = p.registers;
  const terminal = model.terminals.find((t) => t.id === first);
  const face = (terminal?.resistance ?? 0) * (flows.terminals[first] ?? 0) ** 2;
  if (p.at === 'register') return face;
  let drop = face;
  for (let x: DuctSection | undefined = sectionOf(model, terminal?.section); x; x = sectionOf(model, x.from)) {
    drop += flows.drops[x.id] ?? 0;
    if (x.id === p.id) break;
  }
  return drop;
}

const sectionOf = (model: AirModel, id: string | undefined): DuctSection | undefined =>
  model.sections.find((x) => x.id === id);
