import { build } from 'esbuild';
import { expect, it } from 'vitest';
import { builtTrades } from '../engine/src/finders.ts';
import { root } from './files.ts';

/** The files of which anything is left in a bundle of these entries. */
async function filesIn(...entries: readonly string[]): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: [...entries],
    outdir: 'gates',
    absWorkingDir: root,
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    metafile: true,
  });
  return Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) => (bytesInOutput > 0 ? [file] : [])),
  );
}

it('what finds carries nothing of what tells, and no work of jobs', async () => {
  const parts = await filesIn('engine/src/find.ts', 'engine/src/finders.ts');
  for (const trade of builtTrades) expect(parts).toContain(`engine/src/${trade}/findings.ts`);
  const telling = new RegExp(
    `^engine/src/(${builtTrades.join('|')})/(.*/)?(teller|messages|\\w*Words|tasks|readings|sources)\\.ts$|^engine/src/(tell|jobs/run)\\.ts$`,
  );
  expect(parts.filter((file) => telling.test(file))).toEqual([]);
});

// The first counts of a fresh device wait for everything in here; all else arrives later, or elsewhere.
it('what finds first carries nothing of the trades that come later', async () => {
  const parts = await filesIn('engine/src/find.ts', 'engine/src/firstFinders.ts');
  expect(parts).toContain('engine/src/air/findings.ts');
  const late =
    /^engine\/src\/(?:(?:materials|paperwork|schedule|commissioning)\/\w*[fF]indings?|coupling\/lifeCost\/lifeCost)\.ts$/;
  expect(parts.filter((file) => late.test(file))).toEqual([]);
});
