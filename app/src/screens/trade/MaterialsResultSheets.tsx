import type { Plan, TradeResults } from '@kneewall/engine';
import { CutSheets } from './cuts/CutSheets.tsx';

/** What is cut from sheets, lengths and bags. */
export default function MaterialsResultSheets({ result, plan }: { result: TradeResults['materials']; plan: Plan }) {
  return <CutSheets cut={result.cut} plan={plan} />;
}
