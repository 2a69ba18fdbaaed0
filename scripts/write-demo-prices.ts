import { readFileSync, writeFileSync } from 'node:fs';
import { applyEdit, openProject, priceChanges, readPrices } from '@kneewall/project';

/** Takes the invented price file into each demo, the way the Buy page takes one. */
const demos = new URL('../demos/', import.meta.url);
const read = readPrices(readFileSync(new URL('files/invented-prices.csv', demos), 'utf8'));
if (read.left.length > 0 || read.problems.length > 0) throw new Error(JSON.stringify([read.left, read.problems]));
for (const name of ['tern-ledge', 'juniper-flat']) {
  const file = new URL(`${name}.json`, demos);
  const text = readFileSync(file, 'utf8');
  const opened = openProject(text);
  if (!opened.ok) throw new Error(`${name} does not open`);
  const changes = priceChanges(opened.project, read);
  const project = changes.reduce((p, { path, after }, seq) => {
    const before = p.work?.prices?.[path.at(-1) ?? ''];
    return applyEdit(p, { device: 'demo-prices', seq, path, before, after }).value;
  }, opened.project);
  // Only the prices are written anew: all else of the file stays as somebody wrote it.
  const prices = JSON.stringify(project.work?.prices, null, 2).replaceAll('\n', '\n    ');
  writeFileSync(
    file,
    text.replace(/\n {4}"prices": \{[\s\S]*?\n {4}\}/, () => `\n    "prices": ${prices}`),
  );
  process.stdout.write(`${name}: ${changes.length} prices\n`);
}
