import { sideOf } from '../../air/model.ts';
import { standardDensity } from '../../air/networkParts.ts';
import { type FaultKind, faultRows, type Severity } from '../../commissioning/causes/faults.ts';
import type { Cause, Doubt, Node, ResponseTable } from '../../commissioning/causes/table.ts';
import { airDensity } from '../../physics/air/index.ts';
import { attempt, type Outcome, required } from '../../plan/outcome.ts';
import type { Settled } from '../settle.ts';
import { doubtful } from './doubts.ts';
import { faulty } from './faulty.ts';
import { instrumentFaults } from './instrumentFaults.ts';
import { readOff, respond, stateOf } from './respond.ts';
import type { AsBuilt, ResponsesInputs } from './system.ts';

type Tell = (done: number, total: number) => void;
type Planned = { readonly kind: FaultKind; readonly subject?: string; readonly share: number };

/**
 * What every reading would show in a state, with nothing wrong and with each fault at each severity, and what the
 * plan's own doubts move: some eighty solves of the whole system. Unresolved where the sound system has no answer.
 */
export function responses(inputs: ResponsesInputs, tell: Tell): Outcome<ResponseTable> {
  return attempt(() => {
    const { system } = inputs;
    const state = stateOf(system);
    const sound = readOff(system, state);
    const channels = sound.map((r) => r.channel);
    const base = sound.map((r) => r.value);
    const place = new Map(channels.map((c, i) => [c.id, i]));
    const planned = plannedFaults(system);
    const doubted = Object.entries(doubtful).filter(([id]) => system.house !== undefined || !ofDoors.includes(id));
    const total = planned.length + doubted.length;
    let done = 0;
    const solved = (of: AsBuilt): number[] | undefined => {
      const found = attempt(() => respond(of));
      if (!found.ok) return undefined;
      // A channel that a fault silences, as water from a dry coil, reads nothing.
      const values = new Array<number>(base.length).fill(0);
      for (const { channel, value } of found.value) values[place.get(channel.id) ?? -1] = value;
      return values.slice(0, base.length);
    };
    const tick = <T>(value: T): T => {
      tell(++done, total);
      return value;
    };
    const doubts = doubted.map(([id, move]): Doubt => {
      const moved = solved(move(system)) ?? base;
      return tick({ id, moves: moved.map((v, i) => v - (base[i] ?? 0)) });
    });
    const made = planned.map((p) => tick(causeOf(p, inputs, base, channels, solved)));
    const causes = made.filter((c) => c.nodes.length > 0);
    return {
      channels,
      base,
      causes,
      doubts,
      lost: made.filter((c) => c.nodes.length === 0).map((c) => c.id),
      unit: soundUnit(system, state),
    };
  });
}

/** What the witnesses of the unit's flow are held against. */
function soundUnit({ air, stripsOn }: AsBuilt, { point }: Settled): ResponseTable['unit'] {
  const density = airDensity(point.entering, air.pressure);
  return {
    flow: point.flow,
    sensible: point.sensible + stripsOn,
    density,
    points: air.blower.points.map(({ flow, pressure }) => ({ flow, pressure })),
    thinness: density / standardDensity,
  };
}

const ofRuns: readonly FaultKind[] = ['crushed-run', 'shut-damper', 'loose-run'];

/** Doubts that move nothing while doors stand open. */
const ofDoors: readonly string[] = ['door-gaps', 'house-leaks'];

function plannedFaults({ air, house }: AsBuilt): Planned[] {
  const runs = air.terminals.flatMap((t) => (sideOf(air, t.section) === 'supply' ? [t.id] : []));
  const rooms = (house?.rooms ?? []).flatMap((r) => (r.opening > 0 ? [r.id] : []));
  const each = (kind: FaultKind, places: readonly string[]): Planned[] =>
    places.map((subject) => ({ kind, subject, share: 1 / places.length }));
  return (Object.keys(faultRows) as FaultKind[]).flatMap((kind) => {
    if (kind === 'no-transfer') return each(kind, rooms);
    return ofRuns.includes(kind) ? each(kind, runs) : [{ kind, share: 1 }];
  });
}

function causeOf(
  { kind, subject, share }: Planned,
  inputs: ResponsesInputs,
  base: readonly number[],
  channels: ResponseTable['channels'],
  solved: (of: AsBuilt) => number[] | undefined,
): Cause {
  const { prior, severities } = faultRows[kind];
  const shown = instrumentFaults[kind];
  const variants = variantsOf(kind, subject, inputs, severities);
  const found = variants.flatMap(({ system, size, weight }): Node[] => {
    if (shown) return [{ size, weight, values: base.map((v, i) => shown(v, size, required(at(channels, i)))) }];
    const values =
      system === inputs.system ? (kind === 'none' || kind === 'other' ? [...base] : undefined) : solved(system);
    return values ? [{ size, weight, values }] : [];
  });
  const weight = found.reduce((sum, n) => sum + n.weight, 0);
  return {
    id: subject === undefined ? kind : `${kind}:${subject}`,
    kind,
    ...(subject === undefined ? {} : { subject }),
    prior: prior * share,
    nodes: found.map((n) => ({ ...n, weight: n.weight / weight })),
  };
}

const at = <T>(list: readonly T[], i: number): Outcome<T> => {
  const value = list[i];
  return value === undefined ? { ok: false, because: 'fault', paths: [] } : { ok: true, value };
};

type Variant = Severity & { readonly system: AsBuilt };

/** The system with the fault at each of its severities. */
function variantsOf(
  kind: FaultKind,
  subject: string | undefined,
  { system, settings, speeds }: ResponsesInputs,
  severities: readonly Severity[],
): Variant[] {
  if (kind === 'blower-setting')
    return settings.map((blower, size) => ({
      size,
      weight: 1 / settings.length,
      system: { ...system, air: { ...system.air, blower } },
    }));
  if (kind === 'other-speed')
    return speeds.map(({ speed, blower }, size) => ({
      size,
      weight: 1 / speeds.length,
      system: { ...system, air: { ...system.air, blower }, state: { ...system.state, speed } },
    }));
  return severities.map((x) => ({ ...x, system: faulty(system, kind, x.size, subject) }));
}
