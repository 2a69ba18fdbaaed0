import type { SchemaNode } from '@kneewall/project';
import { type Entered, printQuantity, type System } from '@kneewall/project';

type Entry = Readonly<Record<string, unknown>>;

/** What an entry is called on the page: its name, else its first answers, else what such an entry is and its id. */
export function entryName(node: SchemaNode, id: string, entry: Entry, units: System): string {
  if (typeof entry.name === 'string' && entry.name.trim() !== '') return entry.name;
  const said = Object.entries(node.children)
    .flatMap(([key, child]) => answerText(child, entry[key], units))
    .slice(0, 3);
  return said.length > 0 ? said.join(', ') : numbered(node.meta.one ?? 'Entry', id.replaceAll('-', ' '));
}

/** `Room 1` for `room 1`: an id that is made of what such an entry is does not say it twice. */
const numbered = (one: string, id: string): string =>
  id.startsWith(one.toLowerCase()) ? `${one}${id.slice(one.length)}` : `${one} ${id}`;

function answerText({ meta }: SchemaNode, value: unknown, units: System): string[] {
  if (value === undefined) return [];
  if (meta.node === 'choice') return [meta.options?.[String(value)] ?? String(value)];
  if (meta.node === 'text' || meta.node === 'date') return String(value).trim() === '' ? [] : [String(value)];
  if (meta.node !== 'quantity' || !meta.kind) return [];
  const { value: number } = value as Entered;
  return [printQuantity(typeof number === 'number' ? number : number.likely, meta.kind, units)];
}
