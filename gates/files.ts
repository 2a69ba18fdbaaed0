import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../', import.meta.url));

/** Every file of the project, tracked or about to be. */
export const projectFiles: readonly string[] = execFileSync(
  'git',
  ['ls-files', '--cached', '--others', '--exclude-standard'],
  { cwd: root, encoding: 'utf8' },
)
  .split('\n')
  .filter((f) => f !== '');

export const sourceFiles = projectFiles.filter((f) => /\.tsx?$/.test(f) && !f.endsWith('.d.ts'));
export const read = (file: string): string => readFileSync(`${root}${file}`, 'utf8');
