import type { Plan } from '@kneewall/engine';
import { Quantity } from '../../../quantity/Quantity.tsx';

type Props = { readonly plan: Plan; readonly tried: Plan | undefined };

/** What the blower moves, against what, and what stands against these ducts; while a size is tried out, beside it what was. */
export function NowAndBefore({ plan, tried }: Props) {
  const flowOf = (p: Plan) => (p.trades.air?.flows.ok ? p.trades.air.flows.value : undefined);
  const [now, was] = [flowOf(tried ?? plan), tried && flowOf(plan)];
  const flow = (f: typeof now) => (f ? <Quantity value={f.flow} kind="flow" /> : 'unknown');
  const pressure = (f: typeof now) => (f ? <Quantity value={f.staticPressure} kind="pressure" /> : 'unknown');
  return (
    <dl className="duct-now">
      <Fact term="Flow" now={flow(now)} was={tried && flow(was)} />
      <Fact term="Static" now={pressure(now)} was={tried && pressure(was)} />
      <Fact term="Findings" now={against(tried ?? plan)} was={tried && against(plan)} />
    </dl>
  );
}

function Fact({ term, now, was }: { term: string; now: React.ReactNode; was: React.ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {now} {was !== undefined && <span className="duct-was">was {was}</span>}
      </dd>
    </div>
  );
}

/** “2 fail, 5 tight”. */
function against(plan: Plan): string {
  const count = (status: string) => plan.findings.filter((f) => f.trade === 'air' && f.status === status).length;
  return `${count('fails')} fail, ${count('tight')} tight`;
}
