import type { PaperworkResult, Plan } from '@kneewall/engine';
import { questionWords } from '@kneewall/engine';
import { Sheet } from '../../../look/Sheet.tsx';
import { LifeCostSheet } from './LifeCostSheet.tsx';
import { PapersSheet } from './PapersSheet.tsx';
import { QuotesSheet } from './QuotesSheet.tsx';
import { WorkSheet } from './WorkSheet.tsx';

/** Papers by deadline, who may do what, what each unit costs over its life, quotes at one scope, what to ask. */
export default function PaperworkSheets({ result, plan }: { result: PaperworkResult; plan: Plan }) {
  const list = plan.trades.materials?.list;
  return (
    <>
      <PapersSheet result={result} plan={plan} />
      <WorkSheet result={result} />
      <LifeCostSheet outcome={plan.season.lifeCost} />
      <QuotesSheet quotes={result.quotes} cost={list?.ok ? list.value.cost : undefined} />
      <Questions result={result} />
    </>
  );
}

function Questions({ result }: { result: PaperworkResult }) {
  const open = result.questions.filter((q) => q.open);
  if (open.length === 0) return null;
  return (
    <Sheet title="Ask before you decide">
      <p className="field-help">
        What offices, insurers and makers are usually asked. Their answer stands above this plan. A question goes from
        here once a paper entered below answers it.
      </p>
      <ul className="asides">
        {open.map(({ id }) => (
          <li key={id}>
            <strong>{questionWords[id].who}:</strong> {questionWords[id].ask}
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
