import { z } from 'zod';

const size = z.number().positive();
/** How many of one piece: more would take all memory. */
const count = z.number().int().positive().max(100_000);

/** Bars: pieces as a list, or as lengths with how many of each. */
const barsShape = z.object({
  name: z.string(),
  capacity: size,
  items: z.array(size).min(1).optional(),
  lengths: z.array(size).min(1).optional(),
  demand: z.array(count).optional(),
  kerf: z.number().min(0).optional(),
  optimum: z.number().optional(),
  lp_bound: z.number().optional(),
  how_known: z.string().optional(),
});

/** One list of pieces, and a demand for each of them where there is one. */
export const bars = barsShape
  .refine((c) => (c.items === undefined) !== (c.lengths === undefined), {
    message: 'give the pieces as “items” or as “lengths”, one of them',
    path: ['items'],
  })
  .refine((c) => c.demand === undefined || c.demand.length === (c.lengths ?? c.items)?.length, {
    message: 'one number for each length is wanted',
    path: ['demand'],
  });

const sheetResult = z.object({
  min_sheets_guillotine: z.number().optional(),
  lp_bound_over_all_guillotine_patterns: z.number().optional(),
  best_value_one_sheet_unlimited_copies_area: z.number().optional(),
});

/** Sheets: each piece once, or `count` times. */
export const sheets = z.object({
  name: z.string(),
  sheet: z.object({ w: size, h: size }),
  pieces: z
    .array(
      z.object({
        id: z.union([z.string(), z.number()]),
        w: size,
        h: size,
        count: count.optional(),
      }),
    )
    .min(1),
  kerf: z.number().min(0).optional(),
  trim: z.number().min(0).optional(),
  results: z.object({ no_turning: sheetResult.optional(), turning_allowed: sheetResult.optional() }).optional(),
});

export type BarsCase = z.infer<typeof bars>;
export type SheetsCase = z.infer<typeof sheets>;
export type SheetResult = z.infer<typeof sheetResult>;

/** A case file, or one instance of it. Throws, with the place, where it has neither shape. */
export function readPacking(file: unknown): (BarsCase | SheetsCase)[] {
  const many = z.object({ instances: z.unknown() }).safeParse(file);
  if (!many.success) return [readOne(file, '')];
  const { instances } = many.data;
  if (!Array.isArray(instances) || instances.length === 0)
    throw new Error('instances: a list with at least one is wanted');
  return instances.map((one, i) => readOne(one, `instances/${i}`));
}

function readOne(one: unknown, at: string): BarsCase | SheetsCase {
  const sheet = z.object({ sheet: z.unknown() }).safeParse(one);
  const read = sheet.success && sheet.data.sheet !== undefined ? sheets.safeParse(one) : bars.safeParse(one);
  if (read.success) return read.data;
  const said = read.error.issues.slice(0, 5).map((p) => {
    const place = [at, ...p.path.map(String)].filter((x) => x !== '').join('/');
    return `${place === '' ? 'the file' : place}: ${p.message}`;
  });
  throw new Error(said.join('; '));
}
