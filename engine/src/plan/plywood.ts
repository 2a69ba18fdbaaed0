import { inch } from '../physics/exact.ts';

/** m of plywood where nobody entered how thick: 23/32 in. Common practice, no source. */
export const usualPlywood = (23 / 32) * inch;

/** Thickness of a panel as shops say it, in millimetres and in thirty-seconds of an inch: `18 mm (23/32 in)`. m in. */
export function thickSaid(metres: number): string {
  let [over, under] = [Math.round((metres / inch) * 32), 32];
  while (over > 0 && over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  const whole = Math.floor(over / under);
  const part = over % under === 0 ? '' : `${over % under}/${under}`;
  return `${Math.round(metres * 1000)} mm (${[whole > 0 || part === '' ? `${whole}` : '', part].filter((x) => x !== '').join(' ')} in)`;
}
