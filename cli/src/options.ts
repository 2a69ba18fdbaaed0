import { type ParseArgsConfig, parseArgs } from 'node:util';
import type { System } from '@kneewall/project';
import { Refused } from './exit.ts';

/** Node's own argument reader, with its complaints in our words. So many names, or with `more` at least so many. */
export function readOptions<T extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: T,
  files: number,
  more = false,
) {
  try {
    const read = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    if (more ? read.positionals.length < files : read.positionals.length !== files)
      throw new Refused(
        `Expected ${files} ${files === 1 ? 'name' : 'names'}, found ${read.positionals.length}. See "kneewall help".`,
      );
    return read;
  } catch (thrown) {
    if (thrown instanceof Refused) throw thrown;
    throw new Refused(
      `${thrown instanceof Error ? thrown.message.split('. ')[0] : 'Unknown option'}. See "kneewall help".`,
    );
  }
}

/** The system of units named by `--units`; undefined where none is. */
export function unitsNamed(asked: string | undefined): System | undefined {
  if (asked !== undefined && asked !== 'us' && asked !== 'si') throw new Refused('--units is us or si.');
  return asked;
}
