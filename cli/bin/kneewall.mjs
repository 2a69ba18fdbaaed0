#!/usr/bin/env node
import { existsSync } from 'node:fs';

const built = new URL('../dist/kneewall.mjs', import.meta.url);
if (existsSync(built)) await import(built.href);
else {
  console.error('The command line tool is not built yet. Run "npm install" in the checkout once.');
  process.exitCode = 2;
}
