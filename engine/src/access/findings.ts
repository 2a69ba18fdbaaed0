import { required, unresolved } from '../plan/outcome.ts';
import { draftsOf, type Found } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { codeFindings } from './codeFindings.ts';
import { told } from './found.ts';
import { liftFindings } from './liftFindings.ts';
import { planned } from './moreFindings.ts';
import { plannedFacts, plannedFor, plannedSpare } from './plannedFinding.ts';
import type { AccessResult, Passing, Way } from './result.ts';
import { spareWanted } from './spare.ts';

/** What stands in the way of the boxes, of those who carry them, and of whoever works on the unit afterwards. */
export function findings(result: AccessResult, { project }: PlanView): Drafts {
  const found = [
    ...passes(result, spacingOf(project)),
    ...headrooms(result, project.routes.passages),
    ...codeFindings(project.routes),
    ...liftFindings(result, project.routes.access),
    ...planned(result, project.work.windows),
  ];
  return draftsOf(found);
}

type Passages = PlanView['project']['routes']['passages'];

/** m from joist to joist; 0 where it is not to be had. */
function spacingOf({ routes }: PlanView['project']): number {
  const { spacing } = routes.access.platform;
  return 'missing' in spacing ? 0 : spacing.likely;
}

/** m of a joist's own width, common timber. */
const joistWidth = 0.038;

/** Joists that the smallest opening that would do meets, its short side across them and one edge at a joist. */
function joistsCut({ passing, planned }: Way, spacing: number): number {
  const short =
    planned.ok && planned.value.opening ? planned.value.opening[1] : passing.ok ? passing.value.smallest[1] : 0;
  return spacing > joistWidth ? Math.max(0, Math.ceil((short + joistWidth) / spacing - 1e-9) - 1) : 0;
}

/** Ways of the unit the plan is made for; the crate is told of beside the bare handler. */
function ownWays({ ways, chosen }: AccessResult): Way[] {
  if (!ways.ok || !chosen.ok) return [];
  return ways.value.filter((w) => w.candidate === chosen.value && w.piece !== 'handlerCrated');
}

function passes(result: AccessResult, spacing: number): Found[] {
  const own = ownWays(result);
  if (own.length === 0) return [nothingToPass(result)];
  return own.map((way) => passing(way, result, spacing));
}

/** Without a unit or an opening there is nothing to say, and it is said. */
const nothingToPass = ({ ways, chosen }: AccessResult): Found =>
  told(
    {
      id: 'passes',
      subject: 'passages',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'length',
      limit: { min: 0 },
      source: 'access.rectangle',
    },
    () => {
      required(chosen);
      required(ways);
      return unresolved('missing', 'routes.passages');
    },
  );

function crate(way: Way, { ways }: AccessResult): string {
  const crated = ways.ok
    ? ways.value.find((w) => w.candidate === way.candidate && w.passage === way.passage && w.piece === 'handlerCrated')
    : undefined;
  if (way.piece !== 'handler' || !crated?.passing.ok) return 'unknown';
  return crated.passing.value.spare.likely >= 0 ? 'passes' : 'unpack';
}

function passing(way: Way, result: AccessResult, spacing: number): Found {
  const corner = way.kind === 'stair' || way.kind === 'crawl';
  return told(
    {
      id: `passes:${way.passage}/${way.piece}`,
      subject: way.passage,
      item: way.passage,
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'length',
      limit: { min: 0 },
      marginWanted: spareWanted,
      source: corner ? 'access.corner' : 'access.rectangle',
      facts: {
        name: way.name,
        piece: way.piece,
        kind: way.kind,
        crate: crate(way, result),
        ...(way.passing.ok ? factsOf(way.passing.value) : {}),
        ...plannedFacts(way, result),
        joistsCut: joistsCut(way, spacing),
        byPlan: way.passing.ok && plannedFor(way, way.passing.value.spare.likely) ? 1 : 0,
      },
    },
    (rec) => {
      const { spare, pose, opening } = required(way.passing);
      if (plannedFor(way, spare.likely)) return plannedSpare(way, rec);
      const [a, b] = [Math.max(...opening), Math.min(...opening)];
      const [p, q] = [Math.max(...pose.face), Math.min(...pose.face)];
      const square = Math.min(a - p, b - q) === spare.likely;
      rec.step('spare', square ? 'min(a - p, b - q)' : 'table', { a, b, p, q }, spare.likely, 'm', 'access.rectangle');
      return spare;
    },
  );
}

const factsOf = ({ pose, never, smallest, opening }: Passing) => ({
  leading: pose.leading,
  through: pose.through,
  never: never ? 1 : 0,
  smallLong: smallest[0],
  smallShort: smallest[1],
  faceLong: Math.max(...pose.face),
  faceShort: Math.min(...pose.face),
  openLong: Math.max(...opening),
  openShort: Math.min(...opening),
});

/** Of hatches that the piece goes through: closed forms where they are sure, else what motion planning finds. */
function headrooms(result: AccessResult, passages: Passages): Found[] {
  return ownWays(result).flatMap((way) => {
    const height = way.passing.ok ? way.passing.value.height : undefined;
    const field = passages[way.passage]?.headroom;
    if (!height || !field) return [];
    const given = 'missing' in field ? undefined : field.likely;
    const between = given !== undefined && given < height.enough && given >= height.least;
    return [
      told(
        {
          id: `headroom:${way.passage}/${way.piece}`,
          subject: way.passage,
          item: way.passage,
          holdPoint: 'decide',
          consequence: 'money',
          kind: 'length',
          limit: { min: between ? 0 : height.enough },
          ...(between ? { marginWanted: spareWanted } : {}),
          source: between ? 'access.motion' : 'access.tilt',
          facts: {
            name: way.name,
            piece: way.piece,
            enough: height.enough,
            byPlan: between ? 1 : 0,
            ...plannedFacts(way, result),
          },
        },
        (rec) => {
          if ('missing' in field) return unresolved('missing', field.path);
          if (between) return plannedSpare(way, rec);
          rec.given('h', field);
          return field.likely;
        },
      ),
    ];
  });
}
