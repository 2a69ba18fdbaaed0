import { causeWords, type FaultKind, type Plan, type Visit, type VisitFound } from '@kneewall/engine';
import { nodeAt } from '@kneewall/project';
import { FindingLine } from '../../../findings/FindingLine.tsx';
import { Fields } from '../../../form/GroupFields.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { useSession } from '../../../services.ts';
import { OutcomeOr } from '../../trade/OutcomeOr.tsx';
import { TakeReading } from './TakeReading.tsx';

/** One visit: its state, the next reading, what was read and how it stands, and which causes fit. */
export function VisitSheet({ visit, plan }: { visit: Visit; plan: Plan }) {
  const node = nodeAt(['visits', '*'])?.node;
  const mine = plan.findings.filter((f) => f.trade === 'commissioning' && f.subject === visit.id);
  const about = (kind: string) => mine.filter((f) => f.id.startsWith(`commissioning/${kind}:`));
  return (
    <Sheet title={visit.name} className="visit">
      <details className="fold" open={!visit.state.ok}>
        <summary>
          <span className="fold-title">The state it was in</span>
          <span className="fold-count">{visit.state.ok ? 'known' : 'to be entered'}</span>
        </summary>
        {node && <Fields node={node} path={['visits', visit.id]} depth={1} />}
      </details>
      <Lines findings={about('conditions').filter((f) => f.status !== 'ok')} />
      <OutcomeOr outcome={visit.found} what="What readings should be in that state">
        {(found) => (
          <>
            <TakeReading visit={visit.id} found={found} />
            <Lines findings={[...about('causes'), ...about('power'), ...about('reading')]} />
            {found.readings.length > 0 && <Chances found={found} />}
            <ThreeWays found={found} />
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

const Lines = ({ findings }: { findings: Plan['findings'] }) =>
  findings.length === 0 ? null : (
    <ul className="visit-lines">
      {findings.map((f) => (
        <li key={f.id}>
          <FindingLine finding={f} trade={false} />
        </li>
      ))}
    </ul>
  );

/** Below this a cause is one of the others. */
const shown = 0.02;

function Chances({ found }: { found: VisitFound }) {
  const terminals = useSession((s) => s.project.routes?.ducts?.terminals) ?? {};
  const rooms = useSession((s) => s.project.house?.rooms) ?? {};
  const causeName = (id: string): string => {
    const [kind = 'other', at] = id.split(':');
    return causeWords[kind as FaultKind].what(at === undefined ? '' : (terminals[at]?.name ?? rooms[at]?.name ?? at));
  };
  const named = found.suspects.filter((s) => s.chance >= shown);
  const rest = 1 - named.reduce((sum, s) => sum + s.chance, 0);
  return (
    <section>
      <h3>What fits, by chance</h3>
      <ul className="chances">
        {named.map((s) => (
          <li key={s.id}>
            <meter aria-hidden="true" min={0} max={1} value={s.chance} />
            <span className="chance">
              <Quantity value={s.chance} kind="fraction" significant={2} />
            </span>
            <span>{s.causes.map(causeName).join(', and ')}</span>
          </li>
        ))}
        {rest >= shown && (
          <li>
            <meter aria-hidden="true" min={0} max={1} value={rest} />
            <span className="chance">
              <Quantity value={rest} kind="fraction" significant={2} />
            </span>
            <span>all others together</span>
          </li>
        )}
      </ul>
      <p className="field-help">
        Every cause was run through the plan’s own ducts, coil and unit at several severities. Chances before reading
        are invented; one kind of reading alone never makes more than 80 %.
        {found.lost.length > 0 && ' Some causes are beyond what the data sheet states here and are not ruled out.'}
      </p>
    </section>
  );
}

/** The unit's flow by registers, by pressure and by heat: where they disagree, a method is wrong or air is lost. */
function ThreeWays({ found }: { found: VisitFound }) {
  const { expected, registers, table, heat } = found.witnesses;
  const ways = [
    ['Sum of all registers', registers],
    ['Blower’s table at the pressure that was read', table],
    ['Heat over the difference of supply and return', heat],
  ] as const;
  const read = ways.flatMap(([name, flow]) => (flow === undefined ? [] : [{ name, flow }]));
  if (read.length === 0) return null;
  return (
    <section>
      <h3>The unit’s flow, told in three ways</h3>
      <dl className="three-ways">
        {[...read, { name: 'Expected', flow: expected }].map(({ name, flow }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <Quantity value={flow} kind="flow" />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
