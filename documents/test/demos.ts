import { readFileSync } from 'node:fs';
import { openProject, type Project } from '@kneewall/project';

/** A demonstration project as it is opened from its file; also where a test runs in a page's surroundings. */
export function demo(name: 'tern-ledge' | 'juniper-flat'): Project {
  // From the folder the tests are started in: in a page's surroundings a file's own address is not one of the disk.
  const opened = openProject(readFileSync(`${process.cwd()}/demos/${name}.json`, 'utf8'));
  if (!opened.ok) throw new Error(`the demo ${name} does not open`);
  return opened.project;
}
