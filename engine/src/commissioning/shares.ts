import type { Heard } from './causes/likelihood.ts';
import type { ResponseTable } from './causes/table.ts';
import { methods } from './methods.ts';
import { type Verdict, verdictOf } from './verdict.ts';

type Named = Heard & { readonly id: string };

/** Share by which a blower's table is off at a static pressure that was read. */
const tableError = 0.03;

/**
 * Flows of registers as shares of their sum, where every register was read by one method: what is wrong with the method
 * then cancels. The sum itself is that of the blower's table, which is believed where the static pressure was read and
 * is good. By reading; empty where that does not hold. Source: `commissioning.shares`.
 */
export function sharesRead(table: ResponseTable, heard: readonly Named[]): Readonly<Record<string, Verdict>> {
  const registers = table.channels.flatMap((c, i) => (c.id.startsWith('air/flow:') ? [i] : []));
  const read = registers.map((i) => heard.find((h) => h.channel === i));
  const [first] = read;
  if (!first || read.some((r) => r === undefined || r.means !== first.means)) return {};
  const flows = read as readonly Named[];
  const pressure = heard.find((h) => table.channels[h.channel]?.id === 'air/static');
  if (!pressure) return {};
  const { channel, value, means, repeats } = pressure;
  const held = verdictOf({ group: 'pressure', expected: table.base[channel] ?? 0, value, means, repeats });
  if (held.word !== 'good') return {};
  const sum = flows.reduce((a, f) => a + f.value, 0);
  const planned = registers.reduce((a, i) => a + (table.base[i] ?? 0), 0);
  return Object.fromEntries(
    flows.map((f): [string, Verdict] => {
      const expected = table.base[f.channel] ?? 0;
      const scaled = (f.value * planned) / sum;
      const random = methods[f.means].random / Math.sqrt(f.repeats);
      const rest = Math.hypot(...flows.map((o) => (o === f ? 0 : (random * o.value) / sum)));
      const error = scaled * Math.hypot(random * (1 - f.value / sum), rest, tableError);
      return [f.id, verdictOf({ group: 'flow', expected, value: scaled, means: f.means, repeats: f.repeats, error })];
    }),
  );
}
