import { canonicalJson, hashOf } from '@kneewall/project';
import type { Block } from './block.ts';
import type { SheetMarks } from './changedSince.ts';
import type { PlanSet } from './planSet.ts';

/** The cover is left out: its counts and the contents change with everything else. */
export function sheetMarks(set: PlanSet): SheetMarks {
  const drawn = new Map(set.sheets.map((s) => [s.title, s.svg]));
  const [, ...parts] = partsOf(set.content);
  return Object.fromEntries(
    parts.map(({ title, blocks }) => [title, hashOf(canonicalJson([blocks, drawn.get(title) ?? ''])).slice(0, 8)]),
  );
}

/** The blocks by the bookmark they stand under. */
function partsOf(content: readonly Block[]): { readonly title: string; readonly blocks: Block[] }[] {
  const parts: { readonly title: string; readonly blocks: Block[] }[] = [];
  for (const block of content) {
    const title = titleOf(block);
    if (title !== undefined) parts.push({ title, blocks: [] });
    parts.at(-1)?.blocks.push(block);
  }
  return parts;
}

function titleOf(block: Block): string | undefined {
  if ('section' in block) return block.section.map(titleOf).find((t) => t !== undefined);
  return 'text' in block && block.outline && typeof block.text === 'string' ? block.text : undefined;
}
