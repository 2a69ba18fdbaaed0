import type { QuantityKind } from '../quantity/index.ts';
import type { Entered, Known, Range } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';

/** A number the plan may use: entered, or the schema's default and then `assumed`. */
export type Given = Range & { readonly path: string; readonly kind: QuantityKind; readonly known: Known };

/** A named answer the plan may use. */
export type Chosen<T extends string = string> = {
  readonly path: string;
  readonly choice: T;
  readonly known: 'entered' | 'assumed';
};

/** Nothing was entered and no default stands in. */
export type Missing = { readonly path: string; readonly missing: true };

/**
 * A project with every field present: numbers as `Given`, answers as `Chosen`, whatever nobody said as `Missing`.
 * Texts stay texts. Nothing of this is ever written back: loading never writes.
 */
export type Resolved<T> =
  NonNullable<T> extends Entered
    ? Given | Missing
    : NonNullable<T> extends boolean
      ? boolean
      : NonNullable<T> extends string
        ? string extends NonNullable<T>
          ? string | undefined
          : Chosen<NonNullable<T>> | Missing
        : NonNullable<T> extends readonly unknown[]
          ? NonNullable<T> | undefined
          : string extends keyof NonNullable<T>
            ? Readonly<Record<string, Resolved<NonNullable<T>[keyof NonNullable<T>]>>>
            : { readonly [K in keyof NonNullable<T>]-?: Resolved<NonNullable<T>[K]> };

export type ResolvedProject = Omit<Resolved<Project>, 'schema'>;
