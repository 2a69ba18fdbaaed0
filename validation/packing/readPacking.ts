import { z } from 'zod';

const size = z.number().positive();

/** Bars: pieces as a list, or as lengths with how many of each. */
export const bars = z.object({
  name: z.string(),
  capacity: size,
  items: z.array(size).optional(),
  lengths: z.array(size).optional(),
  demand: z.array(z.number().int().positive()).optional(),
  kerf: z.number().min(0).optional(),
  optimum: z.number().optional(),
  lp_bound: z.number().optional(),
  how_known: z.string().optional(),
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
        count: z.number().int().positive().optional(),
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
  const list = z.object({ instances: z.array(z.unknown()).min(1) }).safeParse(file);
  const instances = list.success ? list.data.instances : [file];
  return instances.map((i) =>
    z.object({ sheet: z.unknown() }).safeParse(i).success ? sheets.parse(i) : bars.parse(i),
  );
}
