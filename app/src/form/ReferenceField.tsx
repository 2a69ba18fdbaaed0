import { inOrder, nodeAt, type Project, type SchemaNode, type System } from '@kneewall/project';
import { useMemo } from 'react';
import { useSession, useUnits } from '../services.ts';
import { entryName } from './entryName.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { fieldId, useField } from './useField.ts';

/** Points at an entry of another list, by its name. A dangling one stays and says so. */
export function ReferenceField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const { value, change, barred, problems, saving } = useField(path);
  const project = useSession((s) => s.project);
  const units = useUnits();
  const choices = useMemo(() => targets(project, (meta.to ?? '').split('.'), units), [project, meta.to, units]);
  const own = path.at(-2);
  const dangling = typeof value === 'string' && !choices.some(([id]) => id === value);
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      <select
        id={fieldId(path)}
        className="box"
        disabled={barred}
        aria-describedby={meta.help ? `${fieldId(path)}-help` : undefined}
        value={typeof value === 'string' ? value : ''}
        onChange={(e) => change(e.target.value === '' ? undefined : e.target.value)}
      >
        <option value="">Not said</option>
        {dangling && <option value={value}>“{value}”, which is gone. Choose another</option>}
        {choices
          .filter(([id]) => id !== own)
          .map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
      </select>
    </FieldFrame>
  );
}

type Entry = Readonly<Record<string, unknown>> & { readonly order?: string };

/** Id and name of every entry of a map named by a dotted path, in which `*` stands for any entry. */
function targets(project: Project, to: readonly string[], units: System): (readonly [string, string])[] {
  const star = to.indexOf('*');
  const places = star < 0 ? [to] : Object.keys(entriesAt(project, to.slice(0, star))).map((id) => to.with(star, id));
  return places.flatMap((place) => {
    const node = nodeAt(place)?.node;
    if (!node) return [];
    return inOrder(entriesAt(project, place)).map(([id, entry]) => [id, entryName(node, id, entry, units)] as const);
  });
}

const entriesAt = (project: Project, place: readonly string[]): Readonly<Record<string, Entry>> =>
  (place.reduce<unknown>((v, key) => (v !== null && typeof v === 'object' ? (v as Entry)[key] : undefined), project) as
    | Readonly<Record<string, Entry>>
    | undefined) ?? {};
