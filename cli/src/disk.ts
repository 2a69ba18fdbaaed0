import { constants, type Stats } from 'node:fs';
import { access, chmod, copyFile, mkdir, open, realpath, rename, stat, unlink } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { Refused } from './exit.ts';

/** What a disk would not do, in plain words. */
export const refusedFile = (what: 'read' | 'write', file: string, thrown: unknown): Refused =>
  thrown instanceof Refused ? thrown : new Refused(`Cannot ${what} ${file}: ${plainReason(what, thrown)}.`);

const plainReason = (what: 'read' | 'write', thrown: unknown): string => {
  const code = (thrown as NodeJS.ErrnoException).code;
  if (code === 'ENOENT') return what === 'read' ? 'there is no such file' : 'there is no such folder';
  if (code === 'ENOTDIR') return 'a file stands where a folder is named';
  if (code === 'ENOSPC' || code === 'EDQUOT') return 'the disk is full';
  if (code === 'EFBIG') return 'it grows larger than files may be there';
  if (code === 'ENAMETOOLONG') return 'the name is too long';
  if (code === 'ELOOP') return 'its links lead in a circle';
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS')
    return what === 'read' ? 'it may not be read' : 'nothing may be written there';
  return code === 'EISDIR' ? 'it is a folder' : 'the disk refused';
};

/**
 * Refuses a name that cannot be written, before minutes of work go into what would be put there: no such folder, a folder
 * itself, a device, a place or file that is closed, or one of `inputs`, which would be lost.
 */
export async function mayWrite(file: string, inputs: readonly string[] = []): Promise<void> {
  try {
    const target = await targetOf(file);
    for (const input of inputs)
      if (await isSame(target, input))
        throw new Refused(`Cannot write ${file}: it is what is read, and would be lost.`);
    const beside = besideOf(target);
    await (await open(beside, 'wx')).close();
    await unlink(beside);
  } catch (thrown) {
    throw refusedFile('write', file, await closer(file, thrown));
  }
}

/** The name under which a file is written first. */
const besideOf = (target: string): string =>
  join(dirname(target), `${basename(target).slice(0, 200)}.${process.pid}.new`);

/** Whether nothing can be made in a folder that is there, as in a pseudo file system. */
async function closer(file: string, thrown: unknown): Promise<unknown> {
  if ((thrown as NodeJS.ErrnoException).code !== 'ENOENT') return thrown;
  const there = await stat(dirname(resolve(file))).catch(() => undefined);
  return there ? Object.assign(new Error('closed'), { code: 'EACCES' }) : thrown;
}

/** What stands under a name, if anything. */
const statOf = (name: string): Promise<Stats | undefined> =>
  stat(name).catch((thrown: NodeJS.ErrnoException) => {
    if (thrown.code === 'ENOENT') return undefined;
    throw thrown;
  });

/** The file that is written where a name is given: a link leads to what it names. */
async function targetOf(file: string): Promise<string> {
  const there = await statOf(file);
  if (!there) return resolve(file);
  if (there.isDirectory()) throw new Refused(`Cannot write ${file}: it is a folder.`);
  if (!there.isFile()) throw new Refused(`Cannot write ${file}: it is a device or a pipe, no file.`);
  // Whoever may do all, as root does, is still told that somebody closed it.
  if ((there.mode & 0o222) === 0) throw new Refused(`Cannot write ${file}: it may only be read.`);
  await access(file, constants.W_OK);
  return await realpath(file);
}

const isSame = async (target: string, input: string): Promise<boolean> => {
  const [a, b] = await Promise.all([target, input].map((x) => stat(x).catch(() => undefined)));
  return a !== undefined && b !== undefined && a.dev === b.dev && a.ino === b.ino;
};

/** Writes under a name of its own beside and renames: what was there stays whole until all of the new is on the disk. */
export const writeWhole = (file: string, data: string | Uint8Array): Promise<void> =>
  putWhole(file, async (beside) => {
    const handle = await open(beside, 'wx');
    try {
      await handle.writeFile(data);
      await handle.sync();
    } finally {
      await handle.close();
    }
  });

/** Copies a file the same way. */
export const copyWhole = (from: string, to: string): Promise<void> =>
  putWhole(to, (beside) => copyFile(from, beside, constants.COPYFILE_EXCL));

async function putWhole(file: string, put: (beside: string) => Promise<void>): Promise<void> {
  let beside: string | undefined;
  try {
    const target = await targetOf(file);
    const mode = (await stat(target).catch(() => undefined))?.mode;
    beside = besideOf(target);
    await put(beside);
    if (mode !== undefined) await chmod(beside, mode & 0o777);
    await rename(beside, target);
  } catch (thrown) {
    if (beside !== undefined && (thrown as NodeJS.ErrnoException).code !== 'EEXIST')
      await unlink(beside).catch(() => {});
    throw refusedFile('write', file, await closer(file, thrown));
  }
}

/**
 * Makes a folder and those above it, each by itself from the first that is there: a file system that takes no folders then
 * says so, where making them all at once can go on for ever.
 */
export async function makeFolder(folder: string): Promise<void> {
  const missing: string[] = [];
  try {
    for (let at = resolve(folder); ; at = dirname(at)) {
      const there = await statOf(at);
      if (there && !there.isDirectory()) throw new Refused(`Cannot make the folder ${folder}: ${at} is a file.`);
      if (there) break;
      missing.unshift(at);
    }
    for (const at of missing) await mkdir(at);
    await access(folder, constants.W_OK);
  } catch (thrown) {
    if (thrown instanceof Refused) throw thrown;
    const code = (thrown as NodeJS.ErrnoException).code;
    const why = code === 'ENOENT' ? 'nothing can be made there' : plainReason('write', thrown);
    throw new Refused(`Cannot make the folder ${folder}: ${why}.`);
  }
}
