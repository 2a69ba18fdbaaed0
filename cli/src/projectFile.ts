import { readFile, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import {
  applyEdit,
  hashOfBytes,
  openProject,
  type Problem,
  type Project,
  projectText,
  valueAt,
} from '@kneewall/project';
import { refusedFile, writeWhole } from './disk.ts';
import { Refused } from './exit.ts';

const bytesMost = 64 * 1024 * 1024;

/** The bytes of a file, or a refusal that says what is wrong with the name. */
export async function readBytes(file: string): Promise<Uint8Array> {
  try {
    const { size } = await stat(file);
    if (size > bytesMost) throw new Refused(`${file} is larger than 64 MiB; that is no project and no weather year.`);
    return await readFile(file);
  } catch (thrown) {
    if (thrown instanceof Refused) throw thrown;
    throw refusedFile('read', file, thrown);
  }
}

/** A project from a file, with what is odd about it. */
export async function readProject(file: string): Promise<{ project: Project; problems: readonly Problem[] }> {
  const opened = openProject(new TextDecoder().decode(await readBytes(file)));
  if (!opened.ok) throw new Refused(`${file} was not opened.`, opened.problems);
  return opened;
}

/** A project with one part made anew from what stood there; a part that the project does not take is refused. */
export function withPart(project: Project, path: readonly string[], make: (before: unknown) => unknown): Project {
  const before = valueAt(project, path);
  const { value, problems } = applyEdit(project, { device: 'command-line', seq: 1, path, before, after: make(before) });
  if (problems.length > 0) throw new Refused('The project did not take it.', problems);
  return value;
}

export const writeProject = (file: string, project: Project): Promise<void> => writeWhole(file, projectText(project));

/** Blobs lie in a folder beside the project, each named by its hash. */
export const blobPath = (projectFile: string, hash: string): string => join(dirname(projectFile), 'blobs', hash);

/** A blob's bytes, checked against its name; undefined where it is not at hand. */
export async function readBlob(projectFile: string, hash: string): Promise<Uint8Array | undefined> {
  try {
    const bytes = await readFile(blobPath(projectFile, hash));
    return hashOfBytes(bytes) === hash ? bytes : undefined;
  } catch {
    return undefined;
  }
}
