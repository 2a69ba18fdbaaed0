import { printQuantity } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { type Block, body, lead, page, small, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** The sheets to take along at first start: what each number should be, how to take it, and room to write it down. */
export function readingPages({ plan, units }: SetInput): Block[] {
  return [
    page('Readings: first start and after'),
    lead('A record, not a certificate. Write down what was read, with what, when and by whom, good or not.'),
    ...(plan.readings.length === 0 ? [body('Nothing can be expected yet: a unit and ducts come first.')] : []),
    table(
      [
        { head: 'Reading, and how', width: '*' },
        { head: 'Expected', width: 62, right: true },
        { head: 'Good', width: 82, right: true },
        { head: 'Read', width: 80 },
        { head: 'When, by whom', width: 80 },
      ],
      plan.readings.map((r) => [
        [{ text: r.what, bold: true }, `\n${r.how}`, ...(r.caution ? [{ text: `\n${r.caution}`, bold: true }] : [])],
        printQuantity(r.expected, r.kind, units),
        formatRange({ low: r.good.min, likely: r.expected, high: r.good.max }, r.kind, units),
        '',
        '',
      ]),
      { layout: 'boxed' },
    ),
    small(
      'Outdoors ______  Indoors ______  Humidity ______  Mode and speed ____________  Minutes running ______  Filter ____________',
    ),
  ];
}
