import * as z from 'zod/mini';

/** How a value is known, strongest first. */
export const knownWords = ['measured', 'nameplate', 'estimated', 'assumed'] as const;
export type Known = (typeof knownWords)[number];

export type Range = { readonly low: number; readonly likely: number; readonly high: number };

/** A value as a person gave it. Written whole, never merged part by part. */
export type Entered = {
  readonly value: number | Range;
  readonly known: Known;
  /** What the person typed, kept so that it can be shown and questioned later. */
  readonly as?: string | undefined;
  readonly photo?: string | undefined;
  readonly note?: string | undefined;
};

const ordered = (r: Range): boolean => r.low <= r.likely && r.likely <= r.high;

/** Limits that hold by definition; what has to be more than `above` may not be equal to it. */
export type Possible = { min?: number; above?: number; max?: number };

/** The zod shape of an entered value whose numbers lie within `possible`. */
export function enteredShape({ min, above, max }: Possible): z.ZodMiniType<Entered> {
  const n = z
    .number()
    .check(
      ...(above === undefined ? [] : [z.gt(above)]),
      ...(min === undefined ? [] : [z.minimum(min)]),
      ...(max === undefined ? [] : [z.maximum(max)]),
    );
  const range = z
    .strictObject({ low: n, likely: n, high: n })
    .check(z.refine(ordered, { error: 'low, likely and high must rise', params: { code: 'range-order' } }));
  return z.looseObject({
    value: z.union([n, range]),
    known: z.enum(knownWords),
    as: z.optional(z.string().check(z.maxLength(200))),
    photo: z.optional(z.string().check(z.maxLength(80))),
    note: z.optional(z.string().check(z.maxLength(2000))),
  });
}
