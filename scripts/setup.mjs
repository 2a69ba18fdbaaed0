import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the checkout. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const mark = join(root, 'node_modules', '.kneewall-setup');

/** Runs a command in the checkout with its output shown; gives its exit code. */
export function run(command, args, env = {}) {
  const shown = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
  if (shown.error) console.error(`Could not start ${command}: ${shown.error.message}`);
  return shown.status ?? 1;
}

/** The same, ending this program when the command fails. */
export function must(command, args, env) {
  const code = run(command, args, env);
  if (code !== 0) process.exit(code);
}

/** A package's own program, run by this very Node. */
export const tool = (name) => join(root, 'node_modules', name);

/** Installs exactly what the lock file names, when it changed since the last time. */
export function setUp() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Kneewall needs Node 20.19 or newer; this is ${process.versions.node}.`);
    process.exit(2);
  }
  const hash = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === hash) return;
  console.error('Setting up: installing what Kneewall is built with (once, a minute or two).');
  // Output goes to stderr so that a command with --json keeps its stdout clean.
  const shown = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], { cwd: root, stdio: ['ignore', 2, 2] });
  if (shown.status !== 0) process.exit(shown.status ?? 1);
  mkdirSync(dirname(mark), { recursive: true });
  writeFileSync(mark, hash);
}
