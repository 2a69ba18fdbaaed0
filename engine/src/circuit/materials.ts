import type { MaterialLine } from '../plan/lines.ts';
import { attempt, required } from '../plan/outcome.ts';
import type { CircuitResult, Run, RunId } from './result.ts';
import { sizeName } from './sizeName.ts';
import { standardBelow } from './wires/protection.ts';

/** m; conduit comes in lengths of 10 ft. Common practice. */
const pipeLength = 3.048;

const line = (id: string, what: string, amount: number, of: string): MaterialLine => ({
  id: `circuit/${id}`,
  trade: 'circuit',
  what,
  kind: 'count',
  amount,
  soldBy: 1,
  for: of,
});

/** Wire, protection, disconnect, ground, glands: all of it to be agreed with the electrician who connects it. */
export function materials(result: CircuitResult): readonly MaterialLine[] {
  return [...result.runs.flatMap(runLines), ...betweenLines(result)];
}

const toWords: Readonly<Record<RunId, string>> = { outdoor: 'the outdoor unit', handler: 'the air handler' };
const kinds: Readonly<Record<Run['laid'], string>> = {
  cable: 'House cable for dry places',
  outdoor: 'Cable for wet places',
  pipe: 'Conductors for conduit, 90 °C insulation, made for wet places,',
};

const poleWords = { 1: 'one pole', 2: 'two poles', 3: 'three poles' } as const;

function runLines(run: Run): MaterialLine[] {
  const of = `routes.wires.${run.id}`;
  const to = toWords[run.id];
  const wire = attempt((): MaterialLine => {
    const { area } = required(run.conductor);
    const ground = required(run.ground);
    const wires = `${kinds[run.laid]} ${run.poles === 3 ? 'three' : 'two'} of ${sizeName(area)} ${run.metal} and a ground of ${sizeName(ground.area)}`;
    return {
      id: `circuit/wire:${run.id}`,
      trade: 'circuit',
      what: `${wires}, to ${to}`,
      like: {
        id: `${run.laid} ${run.poles === 3 ? 3 : 2} x ${sizeName(area)} ${run.metal}, ${sizeName(ground.area)}`,
        what: wires,
      },
      kind: 'length',
      amount: required(run.length).high,
      for: of,
    };
  });
  const conduit = attempt((): MaterialLine[] => {
    if (run.fill === undefined) return [];
    const { pipe, name } = required(run.fill);
    const size = name === undefined ? `${Math.round(pipe * 1000)} mm inside` : `${name} in trade size`;
    return [
      {
        id: `circuit/conduit:${run.id}`,
        trade: 'circuit',
        what: `Conduit, ${size}, to ${to}, with its couplings, straps and bends`,
        like: { id: `conduit ${size}`, what: `Conduit, ${size}, with its couplings, straps and bends` },
        kind: 'length',
        amount: required(run.length).high,
        pieces: [{ name: `Conduit to ${to}`, length: required(run.length).high, count: 1 }],
        soldBy: pipeLength,
        for: of,
      },
    ];
  });
  const rest = attempt(() => {
    // A breaker that is too large is judged, and never put on the list.
    const size = Math.min(required(run.protection).size, standardBelow(required(run.rating).most));
    const disconnect = required(run.disconnect).size;
    return [
      line(
        `protection:${run.id}`,
        `Breaker of ${size} A, ${poleWords[run.poles]}, of the panel’s own make, for ${to}`,
        1,
        of,
      ),
      line(`disconnect:${run.id}`, `Disconnect of ${disconnect} A that can be locked off, at ${to}`, 1, of),
      ...(run.id === 'outdoor'
        ? [
            line(
              'whip:outdoor',
              `Flexible whip for wet places, with its connectors, from the disconnect to ${to}`,
              1,
              of,
            ),
          ]
        : []),
      line(`glands:${run.id}`, `Glands and bushings where the wires enter panel, disconnect and ${to}`, 4, of),
      line(`labels:${run.id}`, `Labels: circuit at the panel, panel at the disconnect of ${to}`, 2, of),
    ];
  });
  return [...(wire.ok ? [wire.value] : []), ...(conduit.ok ? conduit.value : []), ...(rest.ok ? rest.value : [])];
}

function betweenLines({ between }: CircuitResult): MaterialLine[] {
  if (!between?.wanted.ok || !between.length.ok) return [];
  const size = between.size === undefined ? 'the size the maker names' : sizeName(between.size);
  return [
    {
      id: 'circuit/between',
      trade: 'circuit',
      what: `Cable between the units: ${between.wanted.value} conductors of ${size}${between.screened ? ', screened' : ''}, in one length`,
      kind: 'length',
      amount: between.length.value.high,
      for: 'routes.wires.between',
    },
    line('between-glands', 'Glands for the cable between the units', 2, 'routes.wires.between'),
  ];
}
