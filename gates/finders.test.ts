import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { builtTrades } from '../engine/src/finders.ts';
import { root } from './files.ts';

// The first counts of a fresh device wait for everything in here; words, lists and job code arrive later, or elsewhere.
it('what finds carries nothing of what tells, and no work of jobs', async () => {
  const { metafile } = await build({
    entryPoints: ['engine/src/find.ts'],
    absWorkingDir: root,
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    metafile: true,
  });
  const parts = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
  );
  for (const trade of builtTrades) expect(parts).toContain(`engine/src/${trade}/findings.ts`);
  const telling = new RegExp(
    `^engine/src/(${builtTrades.join('|')})/(.*/)?(teller|messages|\\w*Words|tasks|readings|sources)\\.ts$|^engine/src/(tell|jobs/run)\\.ts$`,
  );
  expect(parts.filter((file) => telling.test(file))).toEqual([]);
});
