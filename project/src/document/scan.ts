import type { Problem } from './problem.ts';
import { refused } from './problem.ts';

export const limits = { bytes: 32 * 1024 * 1024, depth: 64 } as const;

type Frame = { keys: Set<string> | undefined; at: string | number };

/**
 * Looks a JSON text through before it is parsed: size, depth, repeated and forbidden keys. Parsing would lose the
 * first of two equal keys silently and may run out of stack on deep nesting. The first problem found is returned.
 */
export function scanJson(text: string): Problem | undefined {
  if (text.length > limits.bytes)
    return refused('too-large', [], 'Open a smaller file; photos and weather live beside the project, not in it.', {
      found: text.length,
      allowed: limits.bytes,
    });
  const stack: Frame[] = [];
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    const top = stack[stack.length - 1];
    if (c === '{' || c === '[') {
      stack.push({ keys: c === '{' ? new Set() : undefined, at: 0 });
      if (stack.length > limits.depth)
        return refused(
          'too-deep',
          pathOf(stack.slice(0, 4)),
          'This is not a project file; nothing in one is nested so deep.',
          {
            found: stack.length,
            allowed: limits.depth,
          },
        );
    } else if (c === '}' || c === ']') stack.pop();
    else if (c === ',' && top && !top.keys) top.at = Number(top.at) + 1;
    else if (c === '"') {
      const end = endOfString(text, i);
      if (top?.keys && text[skipBlanks(text, end + 1)] === ':') {
        const key = unquote(text.slice(i, end + 1));
        const problem = keyProblem(stack, top.keys, key);
        if (problem) return problem;
        top.keys.add(key);
        top.at = key;
      }
      i = end;
    }
  }
  return undefined;
}

function keyProblem(stack: readonly Frame[], seen: ReadonlySet<string>, key: string): Problem | undefined {
  const path = [...pathOf(stack.slice(0, -1)), key];
  if (key === '__proto__')
    return refused('forbidden-key', path, 'Take this entry out; no project has one of that name.');
  if (seen.has(key)) return refused('duplicate-key', path, 'It stands here twice. Keep one of the two.');
  return undefined;
}

const pathOf = (stack: readonly Frame[]): (string | number)[] => stack.map((f) => f.at);

function endOfString(text: string, start: number): number {
  let i = start + 1;
  while (i < text.length && text[i] !== '"') i += text[i] === '\\' ? 2 : 1;
  return i;
}

function skipBlanks(text: string, from: number): number {
  let i = from;
  while (i < text.length && /\s/.test(text[i] ?? '')) i++;
  return i;
}

function unquote(quoted: string): string {
  try {
    return String(JSON.parse(quoted));
  } catch {
    return quoted;
  }
}
