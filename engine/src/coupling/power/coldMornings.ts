import type { BatteryInputs } from '../../offgrid/result.ts';
import type { PowerRun } from './runWay.ts';

const dawn = 6;
const noon = 12;

/** Days on which, at some time between six and noon, lithium cells are below freezing and take no charge. Lead does. */
export function coldMornings({ chemistry }: BatteryInputs, { record, hours }: PowerRun): number {
  if (chemistry === 'lead-acid') return 0;
  const perDay = Math.round(24 / hours);
  let mornings = 0;
  for (let day = 0; (day + 1) * perDay <= record.cell.length; day++) {
    const [from, to] = [dawn / hours, noon / hours].map((step) => day * perDay + Math.round(step));
    if (record.cell.subarray(from, to).some((t) => t < 0)) mornings++;
  }
  return mornings;
}
