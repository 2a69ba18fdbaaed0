import type { Given, Missing } from '@kneewall/project';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';
import type { LinesetResult } from './result.ts';

const told = telling('lineset', 'lineset');
/** m beside couplings for two spanners against each other. Source: `lineset.spanners`. */
const spannersLeast = 0.3;
/** m straight out of a coupling before a bend begins. Source: `lineset.bend`. */
const straightLeast = 0.1;

type Lineset = PlanView['project']['routes']['lineset'];

/** The way of the line and its ends: each only where something of it is entered. */
export const routeFindings = (result: LinesetResult, { project }: PlanView): Found[] => {
  const { lineset } = project.routes;
  return [
    ...runBeside(result, lineset),
    ...inside(result, lineset),
    ...hole(lineset),
    ...ends(lineset),
    ...spare(result, lineset),
  ];
};

/** m between a length that was entered and the way to the place on the wall, which goes before it. */
function runBeside({ spot }: LinesetResult, { run, slack }: Lineset): Found[] {
  if ('missing' in run || 'missing' in slack || !spot.ok || spot.value.needed === undefined) return [];
  const way = spot.value.needed.likely - slack.likely;
  const apart = Math.abs(run.likely - way);
  return [
    told(
      {
        id: 'run-beside',
        holdPoint: 'order',
        consequence: 'money',
        kind: 'length',
        // It never fails: the place counts, whatever was entered.
        limit: { max: Math.max(slack.likely, apart) },
        ...(apart > slack.likely ? { marginWanted: slack.likely } : {}),
        source: 'lineset.way',
        facts: { run: run.likely, way },
      },
      (rec) => {
        rec.given('L_entered', run);
        rec.step('L_way', 'table', {}, way, 'm', 'lineset.way');
        rec.step(
          'apart',
          'max(L_entered - L_way, L_way - L_entered)',
          { L_entered: run.likely, L_way: way },
          apart,
          'm',
          'lineset.way',
        );
        return apart;
      },
    ),
  ];
}

/** A measured way inside against the shortest there is, and room for its bends; for the wall of the place alone. */
function inside({ insides }: LinesetResult, { walls, place, slack }: Lineset): Found[] {
  const wall = place.wall === undefined ? undefined : walls[place.wall];
  const drawn = insides.find((i) => i.wall === place.wall)?.way;
  if (!wall || !drawn) return [];
  const spareOf = drawn.ok ? drawn.value.bendSpare : undefined;
  return [
    told(
      {
        id: 'inside-way',
        holdPoint: 'order',
        consequence: 'money',
        kind: 'length',
        limit: { min: 0 },
        source: 'lineset.way',
        facts: {
          ...(drawn.ok ? { shortest: drawn.value.length, bends: drawn.value.bends } : {}),
          ...('missing' in wall.inside ? {} : { entered: wall.inside.likely }),
        },
      },
      (rec) => {
        const { length } = required(drawn);
        const s = scenario();
        const measured = s.maybe(wall.inside) ?? length;
        const inputs = { L_in: measured, slack: s.of(slack), L_least: length };
        rec.step('over', 'L_in + slack - L_least', inputs, measured + s.of(slack) - length, 'm', 'lineset.way');
        return measured + s.of(slack) - length;
      },
    ),
    ...(spareOf === undefined
      ? []
      : [
          told(
            {
              id: 'inside-bends',
              holdPoint: 'connect',
              consequence: 'damage',
              kind: 'length',
              limit: { min: 0 },
              source: 'lineset.bend',
              facts: { lacks: -spareOf },
            },
            (rec) => {
              rec.step('spare', 'table', {}, spareOf, 'm', 'lineset.bend');
              return spareOf;
            },
          ),
        ]),
  ];
}

/** The sleeve against what has to go through it: a coupling with the other line beside it. */
function hole({ sleeve, coupling, lineWide }: Lineset): Found[] {
  if ('missing' in sleeve && 'missing' in coupling) return [];
  const least = attempt(() => scenario().of(coupling) + scenario().of(lineWide));
  return [
    told(
      {
        id: 'hole',
        holdPoint: 'cut',
        consequence: 'damage',
        kind: 'length',
        limit: least.ok ? { min: least.value } : {},
        source: 'lineset.hole',
      },
      (rec) => {
        required(least);
        return takenDown(rec, 'd', sleeve);
      },
    ),
  ];
}

function ends(lineset: Lineset): Found[] {
  const bend = attempt(() => scenario().of(lineset.bend) + straightLeast);
  const at = (id: string, field: Given | Missing, min: number | undefined, source: string): Found[] =>
    'missing' in field
      ? []
      : [
          told(
            {
              id,
              holdPoint: 'order',
              consequence: 'damage',
              kind: 'length',
              limit: min === undefined ? {} : { min },
              source,
            },
            (rec) => {
              required(bend);
              return takenDown(rec, 'free', field);
            },
          ),
        ];
  const straight = bend.ok ? bend.value : undefined;
  return [
    ...at('spanners:handler', lineset.spannerHandler, spannersLeast, 'lineset.spanners'),
    ...at('spanners:outdoor', lineset.spannerOutdoor, spannersLeast, 'lineset.spanners'),
    ...at('straight:handler', lineset.straightHandler, straight, 'lineset.bend'),
    ...at('straight:outdoor', lineset.straightOutdoor, straight, 'lineset.bend'),
  ];
}

/** Room for the spare as a flat loop, where its room is entered and there is enough of it for one. */
function spare({ loop }: LinesetResult, { spare: room }: Lineset): Found[] {
  const { width, depth } = room;
  if ('missing' in width || 'missing' in depth || !loop.ok || loop.value.turns === 0) return [];
  const { turns, across, length } = loop.value;
  return [
    told(
      {
        id: 'spare',
        holdPoint: 'connect',
        consequence: 'damage',
        kind: 'length',
        limit: { min: across },
        source: 'lineset.loop',
        facts: { turns, length, where: 'choice' in room.where ? room.where.choice : 'attic' },
      },
      (rec) => {
        rec.given('a', width);
        rec.given('b', depth);
        const least = Math.min(width.likely, depth.likely);
        rec.step('room', 'min(a, b)', { a: width.likely, b: depth.likely }, least, 'm', 'lineset.loop');
        return least;
      },
    ),
  ];
}

function takenDown(rec: Parameters<Parameters<typeof told>[1]>[0], symbol: string, field: Given | Missing): number {
  if ('missing' in field) return unresolved('missing', field.path);
  rec.given(symbol, field);
  return field.likely;
}
