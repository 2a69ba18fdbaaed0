import { type Plan, sizeName } from '@kneewall/engine';
import { type Project, printQuantity, type QuantityKind, resolveProject, type System } from '@kneewall/project';

/** A place on the way of the current, and what is written in its box. */
export type Place = { readonly title: string; readonly lines: readonly string[] };

/** One circuit from the panel: what is written along its line, from the breaker to the unit at its end. */
export type Branch = {
  readonly id: 'outdoor' | 'handler';
  readonly breaker: string;
  readonly wire: readonly string[];
  readonly disconnect: Place;
  readonly unit: Place;
};

/** All that a one-line drawing is made from, in words of the person's units; what nobody knows is `unknown`. */
export type OneLineFacts = {
  readonly sources: {
    readonly panels?: Place;
    readonly generator?: Place;
    readonly battery?: Place;
    /** Along the line from the battery. */
    readonly fuse?: readonly string[];
    /** The inverter, or the grid. */
    readonly supply: Place;
  };
  readonly panel: Place;
  readonly branches: readonly Branch[];
  /** The cable between the two units. */
  readonly between?: readonly string[];
  /** The air handler, where it has no circuit of its own. */
  readonly handler?: Place;
};

type Circuit = NonNullable<Plan['trades']['circuit']>;
type Run = Circuit['runs'][number];
type Say = (value: number | undefined, kind: QuantityKind) => string;

const likely = (x: { readonly likely: number } | { readonly missing: true }): number | undefined =>
  'likely' in x ? x.likely : undefined;

/** Reads supply, wires and units from a plan and its project; nothing where no unit's wires are planned. Pure. */
export function oneLineFacts(plan: Plan, project: Project, units: System): OneLineFacts | undefined {
  const { circuit } = plan.trades;
  if (!circuit || circuit.runs.length === 0) return undefined;
  const say: Say = (value, kind) => (value === undefined ? 'unknown' : printQuantity(value, kind, units));
  const resolved = resolveProject(project);
  const phases = 'choice' in resolved.power.phases && resolved.power.phases.choice === 'three' ? 'three' : 'single';
  const handlerHasOwn = circuit.runs.some((r) => r.id === 'handler');
  return {
    sources: circuit.supply === 'own' ? ownSources(circuit, resolved, say) : { supply: { title: 'Grid', lines: [] } },
    panel: {
      title: 'Panel',
      lines: [
        `${say(circuit.voltage, 'voltage')}, ${phases} phase, ${say(likely(resolved.power.frequency), 'frequency')}`,
      ],
    },
    branches: circuit.runs.map((run) => branchOf(run, circuit, say)),
    ...(circuit.between ? { between: betweenLines(circuit.between, say) } : {}),
    ...(handlerHasOwn ? {} : { handler: { title: 'Air handler', lines: ['no circuit of its own'] } }),
  };
}

function ownSources(
  { battery }: Circuit,
  { power }: ReturnType<typeof resolveProject>,
  say: Say,
): OneLineFacts['sources'] {
  const arrays = Object.values(power.arrays);
  const rated = arrays.reduce<number | undefined>((sum, a) => {
    const one = likely(a.power);
    return sum === undefined || one === undefined ? undefined : sum + one;
  }, 0);
  const generator = likely(power.generator.power);
  const { continuous, surge } = power.inverter;
  return {
    ...(arrays.length > 0 ? { panels: { title: 'Solar panels', lines: [say(rated, 'electric-power')] } } : {}),
    ...(generator === undefined
      ? {}
      : { generator: { title: 'Generator', lines: [say(generator, 'electric-power')] } }),
    battery: {
      title: 'Battery',
      lines: [say(likely(power.battery.energy), 'energy'), say(likely(power.battery.voltage), 'voltage')],
    },
    fuse: battery?.ok ? [`fuse ${say(battery.value.fuse, 'current')}`, 'or more'] : ['fuse unknown'],
    supply: {
      title: 'Inverter and charger',
      lines: [say(likely(continuous), 'electric-power'), `${say(likely(surge), 'electric-power')} for seconds`],
    },
  };
}

const endOf: Readonly<Record<Run['id'], string>> = { outdoor: 'Outdoor unit', handler: 'Air handler' };

function branchOf(run: Run, { unit }: Circuit, say: Say): Branch {
  const at = run.sight.ok ? [`${say(run.sight.value, 'length')} from the unit`] : ['in sight of the unit'];
  return {
    id: run.id,
    breaker: `breaker or fuse ${run.protection.ok ? say(run.protection.value.size, 'current') : 'unknown'}`,
    wire: wireLines(run, say),
    disconnect: {
      title: 'Disconnect',
      lines: [run.disconnect.ok ? say(run.disconnect.value.size, 'current') : 'unknown', ...at],
    },
    unit: { title: endOf[run.id], lines: unit.ok ? [unit.value.name] : [] },
  };
}

function wireLines(run: Run, say: Say): string[] {
  const { conductor, ground, fill, length, drop } = run;
  const count = run.poles === 3 ? 3 : 2;
  return [
    conductor.ok ? `${count} × ${sizeName(conductor.value.area)} ${run.metal}` : 'conductors unknown',
    ground.ok ? `ground ${sizeName(ground.value.area)}` : 'ground unknown',
    ...(fill?.ok ? [`in conduit of ${say(fill.value.pipe, 'length')} inside`] : []),
    length.ok ? `${say(length.value.likely, 'length')} one way` : 'length unknown',
    ...(drop.ok ? [`loses ${say(drop.value.share.likely, 'fraction')}`] : []),
  ];
}

function betweenLines(between: NonNullable<Circuit['between']>, say: Say): string[] {
  const { wanted, size, screened, length } = between;
  return [
    wanted.ok ? `${wanted.value} conductors, ground among them` : 'conductors unknown',
    [size === undefined ? 'size as the maker names' : sizeName(size), ...(screened ? ['screened'] : [])].join(', '),
    ...(length.ok ? [`${say(length.value.likely, 'length')}, one length`] : []),
  ];
}
