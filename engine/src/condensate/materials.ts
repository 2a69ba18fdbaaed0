import type { MaterialLine, StraightPiece } from '../plan/lines.ts';
import { drawnRuns, pipeFittings } from './pipeFittings.ts';
import type { Along, CondensateResult } from './result.ts';

/** m; plastic pipe comes in lengths of 10 ft. Common practice. */
const pipeLength = 3.048;
/** m; foam in 6 ft. Common practice. */
const foamLength = 6 * 0.3048;
/** m from hanger to hanger. Source: `condensate.slope`; common practice. */
const hangers = 1.2;
/** m of pipe that trap, vent and clean-outs take. Common practice. */
const atTrap = 1;

const count = (id: string, what: string, amount: number): MaterialLine => ({
  id: `condensate/${id}`,
  trade: 'condensate',
  what,
  kind: 'count',
  amount,
  soldBy: 1,
  for: 'routes.drain',
});

const length = (id: string, what: string, amount: number, soldBy: number): MaterialLine => ({
  id: `condensate/${id}`,
  trade: 'condensate',
  what,
  kind: 'length',
  amount,
  soldBy,
  for: 'routes.drain',
});

/** Pipe, trap, vent, hangers, and what catches the water when the drain stops. */
export function materials({ along, stretches, risers, secondLine, pumped }: CondensateResult): readonly MaterialLine[] {
  if (!along.ok) return [];
  const { run, size, second, insulation, float, pump } = along.value;
  const line = secondRun(second, secondLine.ok ? secondLine.value.run : run);
  const pipe = `Drain pipe, ${Math.round(size * 1000)} mm inside`;
  return [
    { ...length('pipe', pipe, run + atTrap, pipeLength), pieces: pipePieces(stretches, run) },
    count('trap', 'Elbows for a trap of the drawn size', 4),
    count('clean-outs', 'Tees with caps: a clean-out before and after the trap', 2),
    count('vent', 'Tee for the vent after the trap', 1),
    count('hangers', 'Hangers for the drain and the second line', hangersFor(run) + (line > 0 ? hangersFor(line) : 0)),
    ...joining(
      drawnRuns(stretches, run).map((x) => x.run),
      line,
    ),
    count('glue', 'Primer and cement for that pipe; solvents: air, no flame, no pilot light', 1),
    count('union', 'Union, so that the trap comes off for cleaning', 1),
    ...foam(stretches, insulation > 0),
    ...(risers.ok ? [count('risers', `Risers under the unit, ${millimetres(risers.value.least)} or higher`, 4)] : []),
    ...caught(second, line, risers.ok),
    ...(float && second !== 'switch'
      ? [count('float', 'Float switch for pan or second outlet, made for the unit’s control voltage', 1)]
      : []),
    ...(pump ? pumpLines(pumped?.ok ? pumped.value.lift : undefined) : []),
  ];
}

/** Foam for the stretches that have some entered, and for trap and vent where the drain has. */
function foam(stretches: CondensateResult['stretches'], atTheTrap: boolean): MaterialLine[] {
  const round = stretches.ok ? stretches.value.filter((x) => x.foam > 0 && x.run > 0) : [];
  const pieces = [
    ...round.map((x) => piece(`Foam, ${x.name === '' ? 'drain' : x.name}`, x.run)),
    ...(atTheTrap ? [piece('Foam, trap, vent and clean-outs', atTrap)] : []),
  ];
  const all = pieces.reduce((a, p) => a + p.length, 0);
  return all > 0 ? [{ ...length('foam', 'Pipe foam, ends butted and taped', all, foamLength), pieces }] : [];
}

/** The pipe stretch by stretch, and what trap, vent and clean-outs take. */
const pipePieces = (stretches: CondensateResult['stretches'], run: number): StraightPiece[] => [
  ...drawnRuns(stretches, run).map((x) => piece(x.name, x.run)),
  piece('Trap, vent and clean-outs', atTrap),
];

const piece = (name: string, long: number): StraightPiece => ({ name, length: long, count: 1 });

const secondPieces = (run: number): StraightPiece[] => [piece('Second line', run), piece('Its bends and end', atTrap)];

/** Up to the next centimetre: blocks are not cut finer. */
const millimetres = (metres: number): string => `${Math.ceil(100 * metres - 1e-9) * 10} mm`;

function pumpLines(lift: number | undefined): MaterialLine[] {
  const height = lift === undefined ? '' : ` that lifts ${millimetres(lift)} with water to spare`;
  return [
    count('pump', `Condensate pump${height}, with a high-water switch that stops the unit`, 1),
    count('tube', 'Coil of tube for the pump, of the size its maker names, with clips', 1),
    count('check-valve', 'Check valve for the pump’s tube, where the pump has none', 1),
  ];
}

/** m of the second outlet's or the pan's line; 0 where there is none. */
const secondRun = (second: Along['second'], run: number): number =>
  second === 'pan' || second === 'overflow' ? run : 0;

const hangersFor = (run: number): number => Math.ceil(run / hangers) + 1;

/** What joins the pipe: to the unit, where lengths end, where it turns. */
function joining(runs: readonly number[], second: number): MaterialLine[] {
  const [own, other] = [
    pipeFittings(runs, runs.length, pipeLength),
    pipeFittings([second], second > 0 ? 1 : 0, pipeLength),
  ];
  const couplings = own.couplings + other.couplings;
  return [
    count('adapters', 'Adapters from the thread of the drain outlet to that pipe', second > 0 ? 2 : 1),
    ...(couplings > 0 ? [count('couplings', 'Couplings for that pipe, where lengths end', couplings)] : []),
    count('elbows', 'Elbows for that pipe, where a stretch begins or ends', own.elbows + other.elbows),
  ];
}

/** Risers lift the unit over the rim of its pan too: blocks would be bought twice. */
function caught(second: Along['second'], run: number, risen: boolean): MaterialLine[] {
  if (second === 'pan')
    return [
      count(
        'pan',
        'Pan under the unit, with its outlet, 3 in longer and wider than the unit, 1 1/2 in deep or more',
        1,
      ),
      ...(risen ? [] : [count('blocks', 'Blocks that keep the unit above the rim of the pan', 4)]),
      { ...length('second-pipe', 'Pipe for the pan’s own line', run + atTrap, pipeLength), pieces: secondPieces(run) },
    ];
  if (second === 'overflow')
    return [
      {
        ...length('second-pipe', 'Pipe for the second outlet’s line', run + atTrap, pipeLength),
        pieces: secondPieces(run),
      },
    ];
  if (second === 'switch')
    return [count('switch', 'Float switch that stops the unit, made for its control voltage', 1)];
  return [];
}
