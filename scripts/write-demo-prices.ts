import { readFileSync, writeFileSync } from 'node:fs';
import { evaluate } from '@kneewall/engine';
import { applyEdit, openProject, type PricesRead, type Project, priceChanges, readPrices } from '@kneewall/project';

const taken = (project: Project, { taken }: Pick<PricesRead, 'taken'>): Project =>
  priceChanges(project, { taken }).reduce((p, { path, after }, seq) => {
    const before = p.work?.prices?.[path.at(-1) ?? ''];
    return applyEdit(p, { device: 'demo-prices', seq, path, before, after }).value;
  }, project);

/** Takes the invented price file into each demo, the way the Buy page takes one; of its rows those that the demo's list uses. */
const demos = new URL('../demos/', import.meta.url);
const read = readPrices(readFileSync(new URL('files/invented-prices.csv', demos), 'utf8'));
if (read.left.length > 0 || read.problems.length > 0) throw new Error(JSON.stringify([read.left, read.problems]));
for (const name of ['tern-ledge', 'juniper-flat']) {
  const file = new URL(`${name}.json`, demos);
  const text = readFileSync(file, 'utf8');
  const opened = openProject(text);
  if (!opened.ok) throw new Error(`${name} does not open`);
  const list = evaluate(taken(opened.project, read), {}).plan.trades.materials?.list;
  if (!list?.ok) throw new Error(`${name} has no list`);
  const used = new Set(list.value.lines.map((l) => l.price?.name));
  const rows = read.taken.filter(
    ({ entry }) => used.has(entry.name) || /duct|collars|dampers|splice/i.test(entry.name ?? ''),
  );
  const project = taken(opened.project, { taken: rows });
  // Only the prices are written anew: all else of the file stays as somebody wrote it.
  const prices = JSON.stringify(project.work?.prices, null, 2).replaceAll('\n', '\n    ');
  writeFileSync(
    file,
    text.replace(/\n {4}"prices": \{[\s\S]*?\n {4}\}/, () => `\n    "prices": ${prices}`),
  );
  process.stdout.write(`${name}: ${rows.length} prices\n`);
}
