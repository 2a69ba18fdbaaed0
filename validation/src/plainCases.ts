import { z } from 'zod';
import { type Row, row } from './row.ts';

/** What a case file expects of one field; without a tolerance one part in 100,000. */
const output = z.strictObject({
  field: z.string(),
  expected: z.number().optional(),
  low: z.number().optional(),
  high: z.number().optional(),
  tolerance: z.number().min(0).optional(),
});

/**
 * Rows of a case file `{ source, cases: [{ case, inputs, outputs }] }`: each case's inputs through `answer`, each
 * output against the field of that name. A field that is not answered is not ok. Throws where the file has another shape.
 */
export function plainCases<I>(
  file: unknown,
  source: string,
  inputs: z.ZodType<I>,
  answer: (inputs: I) => Readonly<Record<string, number>>,
): Row[] {
  const shape = z.object({
    source: z.literal(source),
    cases: z.array(z.object({ case: z.string(), inputs, outputs: z.array(output).min(1) })),
  });
  return shape.parse(file).cases.flatMap((c) => {
    const ours = answer(c.inputs);
    return c.outputs.map(({ field, expected, low, high, tolerance }) =>
      row(
        {
          source,
          case: c.case,
          field,
          unit: '',
          ...(expected === undefined ? {} : { expected }),
          ...(low === undefined ? {} : { low }),
          ...(high === undefined ? {} : { high }),
          tolerance: tolerance ?? 1e-5 * Math.abs(expected ?? 0),
          known: 'computed',
        },
        ours[field] ?? Number.NaN,
      ),
    );
  });
}
