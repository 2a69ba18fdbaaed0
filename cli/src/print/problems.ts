import { dotted, type Problem } from '@kneewall/project';
import { wrap } from './text.ts';

/** Each problem with its place, what was found, and what to do; at most twenty. */
export function problemLines(problems: readonly Problem[]): string[] {
  const shown = problems.slice(0, 20).flatMap((p) => {
    const place = p.path.length > 0 ? dotted(p.path) : 'the file';
    const found = p.found === undefined ? '' : ` Found: ${String(p.found)}.`;
    return wrap(`${place}: ${p.mend}${found}`, 78, '  - ', '    ');
  });
  return problems.length > 20 ? [...shown, `  … and ${problems.length - 20} more.`] : shown;
}
