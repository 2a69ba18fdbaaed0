import { z } from 'zod';
import type { QuantityKind } from '../quantity/index.ts';
import type { TradeId } from '../trade.ts';
import { enteredShape, type Known, type Range } from './entered.ts';

/**
 * The builders that every field of the document is made with. A field carries all that forms, range
 * problems, JSON Schema and the reference pages need, so that none of them keeps a list of its own.
 */
export type FieldMeta = {
  readonly node:
    | 'quantity'
    | 'choice'
    | 'text'
    | 'flag'
    | 'date'
    | 'reference'
    | 'blob'
    | 'points'
    | 'hours'
    | 'group'
    | 'map';
  readonly label: string;
  readonly help?: string;
  readonly kind?: QuantityKind;
  /** Used when nothing is entered, and then called `assumed`. */
  readonly default?: number | Range | string | boolean;
  /** Without it these trades cannot say what depends on it. A field has a default or this, never both. */
  readonly neededBy?: readonly TradeId[];
  /** Outside these a value is kept and asked about. */
  readonly plausible?: { readonly min: number; readonly max: number };
  readonly usually?: Known;
  readonly options?: Readonly<Record<string, string>>;
  /** For a reference: the map it points into, as a dotted path. */
  readonly to?: string;
  /** For a map: what one entry is called. */
  readonly one?: string;
};

/** The key under which a field's own description stands in the exported JSON Schema. */
const metaKey = 'x-field';

const described = <S extends z.ZodType>(schema: S, meta: FieldMeta): S =>
  schema.meta({ title: meta.label, ...(meta.help ? { description: meta.help } : {}), [metaKey]: meta });

/** What a field says of itself; undefined for a schema that was not made by these builders. */
export const metaOf = (schema: z.ZodType): FieldMeta | undefined => schema.meta()?.[metaKey] as FieldMeta | undefined;

type Common = { label: string; help?: string };
type QuantitySpec = Common & {
  default?: number | Range;
  neededBy?: readonly TradeId[];
  plausible: { min: number; max: number };
  possible?: { min?: number; max?: number };
  usually: Known;
};

/** An entered number or range of one quantity kind, in that kind's unit. */
export const quantity = (kind: QuantityKind, spec: QuantitySpec) => {
  const { possible, ...rest } = spec;
  return described(enteredShape(possible ?? {}).optional(), { node: 'quantity', kind, ...rest });
};

type ChoiceSpec<K extends string> = Common & { default?: NoInfer<K>; neededBy?: readonly TradeId[] };

/** One of a few named answers. The words shown are the record's values. */
export const choice = <K extends string>(options: Readonly<Record<K, string>>, spec: ChoiceSpec<K>) =>
  described(z.enum(Object.keys(options) as [K, ...K[]]).optional(), { node: 'choice', options, ...spec });

export const text = (spec: Common & { longest?: number }) => {
  const { longest = 200, ...rest } = spec;
  return described(z.string().max(longest).optional(), { node: 'text', ...rest });
};

export const flag = (spec: Common) => described(z.boolean().optional(), { node: 'flag', default: false, ...spec });

/** A calendar day, `2026-11-25`. */
export const date = (spec: Common) =>
  described(
    z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/)
      .optional(),
    { node: 'date', ...spec },
  );

/** The id of an entry of another map. Dangling ids are kept and asked about. */
export const reference = (to: string, spec: Common & { neededBy?: readonly TradeId[] }) =>
  described(z.string().max(64).optional(), { node: 'reference', to, ...spec });

/** The SHA-256 of a blob that lives beside the document. */
export const blob = (spec: Common) =>
  described(
    z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .optional(),
    { node: 'blob', ...spec },
  );

/** Corner points of a plan outline, metres, in order. */
export const points = (spec: Common) =>
  described(
    z
      .array(z.tuple([z.number(), z.number()]))
      .max(200)
      .optional(),
    { node: 'points', ...spec },
  );

/** Points of a way through the house, metres, in order: across the plan, up the plan, above the floor. */
export const way = (spec: Common) =>
  described(
    z
      .array(z.tuple([z.number(), z.number(), z.number()]))
      .max(200)
      .optional(),
    { node: 'points', ...spec },
  );

/** A number for each hour of the day from midnight, against each other: 24 of them; fewer or more are kept and asked about. */
export const hours = (spec: Common) =>
  described(z.array(z.number().min(0).max(1e6)).max(96).optional(), { node: 'hours', ...spec });

/** Fields that belong together. Unknown fields inside survive loading and saving, yet no type offers them. */
export const group = <S extends z.ZodRawShape>(shape: S, spec: Common) =>
  described((z.looseObject(shape) as unknown as z.ZodObject<S>).optional(), { node: 'group', ...spec });

export const idPattern = /^[a-z0-9][a-z0-9-]{0,63}$/;
/** Order keys compare as plain strings, so that two devices can each insert between two entries. */
const orderKey = z.string().min(1).max(64).optional();

/** A list, kept as entries by id with an order key so that two devices can merge. */
export const map = <S extends z.ZodRawShape>(shape: S, spec: Common & { one: string }) => {
  const entry = z.looseObject({ order: orderKey, ...shape }) as unknown as z.ZodObject<{ order: typeof orderKey } & S>;
  return described(z.record(z.string().regex(idPattern), entry).optional(), { node: 'map', ...spec });
};
