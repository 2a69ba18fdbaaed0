import type { Plugin } from 'vite';

/**
 * Builds the named workers together with the page, so that what both need is one file, fetched once. On its own the
 * bundler builds each worker apart, with its own copy of the schema and of everything else it shares with the page.
 * A worker that nothing waits for is better left apart: what is built together is trimmed only to what any of them needs.
 */
export const workersInBuild = (...names: readonly string[]): Plugin => ({
  name: 'workers-in-build',
  apply: 'build',
  enforce: 'pre',
  async transform(code, importer) {
    let text = code;
    for (const name of names) {
      const asked = `new URL('./${name}.ts', import.meta.url)`;
      if (!text.includes(asked)) continue;
      const at = await this.resolve(`./${name}.ts`, importer);
      if (!at) throw new Error(`assert: ${importer} opens a worker that is not there: ${name}`);
      text = text.replace(asked, `import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id: at.id, name })}`);
    }
    return text === code ? undefined : { code: text, map: null };
  },
});
