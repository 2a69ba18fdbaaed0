import type { Finding, Plan } from '@kneewall/engine';
import { printQuantity } from '@kneewall/project';

/** One finding before and after a change; without the one it is new or gone. */
export type Moved = { readonly id: string; readonly before?: Finding; readonly after?: Finding };

/** What moved between two plans: other status, or a value that prints differently. In the order of the later plan. */
export function movedBetween(before: Plan, after: Plan): Moved[] {
  const was = new Map(before.findings.map((f) => [f.id, f]));
  const is = new Set(after.findings.map((f) => f.id));
  const changed = after.findings.flatMap((f): Moved[] => {
    const old = was.get(f.id);
    if (!old) return [{ id: f.id, after: f }];
    return old.status !== f.status || likelyText(old) !== likelyText(f) ? [{ id: f.id, before: old, after: f }] : [];
  });
  const gone = before.findings.filter((f) => !is.has(f.id)).map((f): Moved => ({ id: f.id, before: f }));
  return [...changed, ...gone];
}

/** The likely value as it would print, so that a last bit moves nothing. */
function likelyText({ value, kind }: Finding): string {
  if (value === undefined || kind === undefined) return '';
  return printQuantity(typeof value === 'number' ? value : value.likely, kind, 'si', { significant: 3 });
}
