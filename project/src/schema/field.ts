import * as z from 'zod/mini';
import type { QuantityKind } from '../quantity/index.ts';
import type { TradeId } from '../trade.ts';
import { enteredShape, type Known, type Possible, type Range } from './entered.ts';

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

const described = <S extends z.ZodMiniType>(schema: S, meta: FieldMeta): S => {
  const said = { title: meta.label, ...(meta.help ? { description: meta.help } : {}), [metaKey]: meta };
  z.globalRegistry.add(schema, said);
  return schema;
};

/** What a field says of itself; undefined for a schema that was not made by these builders. */
export const metaOf = (schema: z.ZodMiniType): FieldMeta | undefined =>
  z.globalRegistry.get(schema)?.[metaKey] as FieldMeta | undefined;

type Common = { label: string; help?: string };
type QuantitySpec = Common & {
  default?: number | Range;
  neededBy?: readonly TradeId[];
  plausible: { min: number; max: number };
  possible?: Possible;
  usually: Known;
};

/** An entered number or range of one quantity kind, in that kind's unit. */
export const quantity = (kind: QuantityKind, spec: QuantitySpec) => {
  const { possible, ...rest } = spec;
  return described(z.optional(enteredShape(possible ?? {})), { node: 'quantity', kind, ...rest });
};

type ChoiceSpec<K extends string> = Common & { default?: NoInfer<K>; neededBy?: readonly TradeId[] };

/** One of a few named answers. The words shown are the record's values. */
export const choice = <K extends string>(options: Readonly<Record<K, string>>, spec: ChoiceSpec<K>) =>
  described(z.optional(z.enum(Object.keys(options) as [K, ...K[]])), { node: 'choice', options, ...spec });

export const text = (spec: Common & { longest?: number }) => {
  const { longest = 200, ...rest } = spec;
  return described(z.optional(z.string().check(z.maxLength(longest))), { node: 'text', ...rest });
};

export const flag = (spec: Common) => described(z.optional(z.boolean()), { node: 'flag', default: false, ...spec });

/** A calendar day, `2026-11-25`. */
export const date = (spec: Common) =>
  described(z.optional(z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))), { node: 'date', ...spec });

/** The id of an entry of another map. Dangling ids are kept and asked about. */
export const reference = (to: string, spec: Common & { neededBy?: readonly TradeId[] }) =>
  described(z.optional(z.string().check(z.maxLength(64))), { node: 'reference', to, ...spec });

/** The SHA-256 of a blob that lives beside the document. */
export const blob = (spec: Common) =>
  described(z.optional(z.string().check(z.regex(/^[0-9a-f]{64}$/))), { node: 'blob', ...spec });

/** Corner points of a plan outline, metres, in order. */
export const points = (spec: Common) =>
  described(z.optional(z.array(z.tuple([z.number(), z.number()])).check(z.maxLength(200))), {
    node: 'points',
    ...spec,
  });

/** Points of a way through the house, metres, in order: across the plan, up the plan, above the floor. */
export const way = (spec: Common) =>
  described(z.optional(z.array(z.tuple([z.number(), z.number(), z.number()])).check(z.maxLength(200))), {
    node: 'points',
    ...spec,
  });

/** A number for each hour of the day from midnight, against each other: 24 of them; fewer or more are kept and asked about. */
export const hours = (spec: Common) =>
  described(z.optional(z.array(z.number().check(z.minimum(0), z.maximum(1e6))).check(z.maxLength(96))), {
    node: 'hours',
    ...spec,
  });

/** Fields that belong together. Unknown fields inside survive loading and saving, yet no type offers them. */
export const group = <S extends z.core.$ZodShape>(shape: S, spec: Common) =>
  described(z.optional(z.looseObject(shape) as unknown as z.ZodMiniObject<S>), { node: 'group', ...spec });

export const idPattern = /^[a-z0-9][a-z0-9-]{0,63}$/;
/** Order keys compare as plain strings, so that two devices can each insert between two entries. */
const orderKey = z.optional(z.string().check(z.minLength(1), z.maxLength(64)));

/** A list, kept as entries by id with an order key so that two devices can merge. */
export const map = <S extends z.core.$ZodShape>(shape: S, spec: Common & { one: string }) => {
  const entry = z.looseObject({ order: orderKey, ...shape }) as unknown as z.ZodMiniObject<
    { order: typeof orderKey } & S
  >;
  return described(z.optional(z.record(z.string().check(z.regex(idPattern)), entry)), { node: 'map', ...spec });
};
