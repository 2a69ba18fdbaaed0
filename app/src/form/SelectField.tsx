import type { SchemaNode } from '@kneewall/project';
import type { ReactNode } from 'react';
import { FieldFrame } from './FieldFrame.tsx';
import { fieldId, type useField } from './useField.ts';

type Props = {
  readonly node: SchemaNode;
  readonly path: readonly string[];
  readonly field: ReturnType<typeof useField>;
  /** The option that is chosen; empty for none. */
  readonly shown: string;
  /** What the document gets for a chosen option. */
  readonly stored: (option: string) => unknown;
  readonly children: ReactNode;
};

/** A box of answers to choose from; the empty one takes the value away. */
export function SelectField({ node: { meta }, path, field, shown, stored, children }: Props) {
  const { value, change, barred, problems, saving } = field;
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      <select
        id={fieldId(path)}
        className="box"
        disabled={barred}
        aria-describedby={meta.help ? `${fieldId(path)}-help` : undefined}
        value={shown}
        onChange={(e) => change(e.target.value === '' ? undefined : stored(e.target.value))}
      >
        {children}
      </select>
    </FieldFrame>
  );
}

/** For fields that store the option itself. */
export const itself = (option: string): string => option;
