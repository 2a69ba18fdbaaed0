import { inOrder, nodeAt, type Project, type SchemaNode, type System, valueAt } from '@kneewall/project';
import { useMemo } from 'react';
import { useSession, useUnits } from '../services.ts';
import { entryName } from './entryName.ts';
import { itself, SelectField } from './SelectField.tsx';
import { useField } from './useField.ts';

/** Points at an entry of another list, by its name. A dangling one stays and says so. */
export function ReferenceField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const field = useField(path);
  const { value } = field;
  const project = useSession((s) => s.project);
  const units = useUnits();
  const choices = useMemo(() => targets(project, (meta.to ?? '').split('.'), units), [project, meta.to, units]);
  const own = path.at(-2);
  const dangling = typeof value === 'string' && !choices.some(([id]) => id === value);
  return (
    <SelectField node={node} path={path} field={field} shown={typeof value === 'string' ? value : ''} stored={itself}>
      <option value="">Not said</option>
      {dangling && <option value={value}>“{value}”, which is gone. Choose another</option>}
      {choices
        .filter(([id]) => id !== own)
        .map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
    </SelectField>
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
  (valueAt(project, place) as Readonly<Record<string, Entry>> | undefined) ?? {};
