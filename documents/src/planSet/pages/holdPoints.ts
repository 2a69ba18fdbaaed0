import { consequenceTitle, type Finding, type HoldPointView, holdPointTitle, tradeTitle } from '@kneewall/engine';
import { type Block, body, bold, lead, page, part, small, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';
import { signOf } from '../signs.ts';

/** What stands against each hold point with what mends it, harm first; and, in short, what holds. */
export function holdPointPages({ plan }: SetInput): Block[] {
  const byId = new Map(plan.findings.map((f) => [f.id, f]));
  return [
    page('What stands against each step'),
    lead('Settle what stands here before the step it names: later it costs more, or cannot be mended.'),
    ...plan.holdPoints.flatMap((point) => onePoint(point, byId)),
  ];
}

function onePoint({ holdPoint, findings }: HoldPointView, byId: ReadonlyMap<string, Finding>): Block[] {
  const here = findings.flatMap((id) => byId.get(id) ?? []);
  const open = here.filter((f) => f.status !== 'ok');
  const holds = here.filter((f) => f.status === 'ok');
  if (here.length === 0) return [];
  const { title, until } = holdPointTitle[holdPoint];
  return [
    ...(open.length === 0
      ? [part(`${title}: ${until}`), body('Nothing stands against it.')]
      : [openTable(`${title}: ${until}`, open)]),
    ...(holds.length === 0 ? [] : heldList(holds)),
  ];
}

/** What holds, a line each, its title never alone at the foot of a page. */
function heldList(holds: readonly Finding[]): Block[] {
  const [first, ...others] = holds.map((f) => small(`✓  ${f.what}`));
  const head = small(bold(`${holds.length} ${holds.length === 1 ? 'holds' : 'hold'}`));
  return [{ stack: [head, ...(first ? [first] : [])], unbreakable: true }, ...others];
}

const openTable = (title: string, open: readonly Finding[]): Block =>
  table(
    [
      { head: 'Status', width: 62 },
      { head: 'What', width: '*' },
      { head: 'What mends it', width: '*' },
    ],
    open.map((f) => [
      [bold(signOf(f.status)), f.consequence === 'harm' ? `\n${consequenceTitle.harm}` : ''],
      [f.what, `  (${tradeTitle[f.trade]})`],
      f.mend,
    ]),
    { title },
  );
