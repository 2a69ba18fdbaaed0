import { existsSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { projectFiles, read, root, sourceFiles } from './files.ts';

const plainSources = sourceFiles.filter((f) => !f.includes('.test.'));
const pure = plainSources.filter((f) => /^(engine|project)\/src\//.test(f));
const treeOf = (file: string) => ts.createSourceFile(file, read(file), ts.ScriptTarget.ES2023, true);

function nodesIn(node: ts.Node, into: ts.Node[] = []): ts.Node[] {
  into.push(node);
  ts.forEachChild(node, (child) => {
    nodesIn(child, into);
  });
  return into;
}

describe('the code is tidy', () => {
  it('sees the files it is about', () => {
    expect(plainSources.length).toBeGreaterThan(150);
  });

  it('has no file above 400 lines that does not say why in its first comment', () => {
    const long = plainSources.filter(
      (f) => read(f).split('\n').length > 400 && !/one file/.test(read(f).slice(0, 400)),
    );
    expect(long).toEqual([]);
  });

  // A component's markup and a store's closure are laid out flat; physics and rules have to fit one screen.
  it('has no function above 70 lines, 120 in the app', () => {
    const long = plainSources.flatMap((file) => {
      const tree = treeOf(file);
      const lineOf = (pos: number) => tree.getLineAndCharacterOfPosition(pos).line + 1;
      return nodesIn(tree).flatMap((n) => {
        if (!ts.isFunctionLike(n) || ts.isFunctionTypeNode(n)) return [];
        const lines = lineOf(n.getEnd()) - lineOf(n.getStart()) + 1;
        return lines > (file.startsWith('app/') ? 120 : 70) ? [`${file}:${lineOf(n.getStart())} ${lines} lines`] : [];
      });
    });
    expect(long).toEqual([]);
  });

  it('has a median below 120 lines', () => {
    const lengths = plainSources.map((f) => read(f).split('\n').length).sort((a, b) => a - b);
    expect(lengths[lengths.length >> 1]).toBeLessThan(120);
  });

  it.each([
    ['a clock', /\bDate\.now\b|new Date\(\)|performance\.now/],
    ['chance', /Math\.random/],
    ['a locale', /toLocale|Intl\./],
    [
      'the outside world',
      /\bfetch\(|from 'node:|\bdocument\.(?:body|get|query|create)|\bwindow\.(?:add|location)|localStorage|\bconsole\./,
    ],
  ])('keeps %s out of engine and project', (_name, pattern) => {
    expect(pure.filter((f) => pattern.test(read(f)))).toEqual([]);
  });

  it('allocates nothing inside the loops of kernels', () => {
    const kernels = plainSources.filter((f) => f.endsWith('.kernel.ts'));
    expect(kernels.length).toBeGreaterThan(0);
    const made = kernels.flatMap((file) =>
      nodesIn(treeOf(file))
        .filter((n) => ts.isForStatement(n) || ts.isWhileStatement(n))
        .flatMap((loop) =>
          nodesIn(loop).filter(
            (n) =>
              ts.isObjectLiteralExpression(n) ||
              ts.isArrayLiteralExpression(n) ||
              ts.isArrowFunction(n) ||
              ts.isNewExpression(n) ||
              ts.isTemplateExpression(n),
          ),
        )
        .map((n) => `${file}: ${n.getText().slice(0, 40)}`),
    );
    expect(made).toEqual([]);
  });

  it('has no catch-all folders or files', () => {
    expect(projectFiles.filter((f) => /(^|\/)(utils?|helpers?|common|misc)(\/|\.)/i.test(f))).toEqual([]);
  });

  it('marks no work as undone and silences no check', () => {
    const soft =
      /\b(?:it|test|describe)\.(?:only|skip)\(|expect\(true\)|@ts-(?:ignore|nocheck)|\bas any\b|\/\/ *(?:TO[D]O|FIX[M]E)/;
    expect(sourceFiles.filter((f) => !f.startsWith('gates/') && soft.test(read(f)))).toEqual([]);
  });
});

describe('the pages tell the truth', () => {
  it('every path that ARCHITECTURE.md names exists', () => {
    const named = [...read('ARCHITECTURE.md').matchAll(/`([a-z0-9-]+(?:\/[\w.*-]+)+\/?)`/g)]
      .map((m) => m[1] ?? '')
      .filter((p) => !p.includes('*'));
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((p) => !existsSync(`${root}${p}`))).toEqual([]);
  });

  it('ARCHITECTURE.md tells of each place once', () => {
    const map = read('ARCHITECTURE.md').split('## Code map')[1]?.split('\n## ')[0] ?? '';
    const told = [...map.replace(/^\*\*.*$/gm, '').matchAll(/`([a-z0-9-]+(?:\/[\w.-]+)+\/?)`/g)].map((m) => m[1] ?? '');
    expect(told.length).toBeGreaterThan(50);
    expect(told.filter((p, i) => told.indexOf(p) !== i)).toEqual([]);
  });

  it('no page says a thing twice', () => {
    const twice = projectFiles
      .filter((f) => /^(?:[A-Z]+|docs\/\w+)\.md$/.test(f))
      .flatMap((page) => {
        const lines = read(page)
          .split('\n')
          .filter((l) => l.length > 30 && !/^\| ?[-:]/.test(l));
        return lines.filter((l, i) => lines.indexOf(l) !== i).map((l) => `${page}: ${l.slice(0, 60)}`);
      });
    expect(twice).toEqual([]);
  });

  it('links between pages lead somewhere', () => {
    const pages = projectFiles.filter((f) => f.endsWith('.md'));
    const broken = pages.flatMap((page) =>
      [...read(page).matchAll(/\]\((?!https?:)([^)#]+)\)/g)]
        .map((m) => new URL(m[1] ?? '', `file://${root}${page}`))
        .filter((u) => !existsSync(u))
        .map((u) => `${page} -> ${u.pathname}`),
    );
    expect(broken).toEqual([]);
  });

  it('CHANGELOG.md has its sections in order', () => {
    const text = read('CHANGELOG.md');
    const sections = [...text.matchAll(/^### (.+)$/gm)].map((m) => m[1]);
    const order = ['Added', 'Changed', 'Fixed', 'Numbers that changed', 'Schema'];
    expect(sections.length).toBeGreaterThan(2);
    expect(sections.every((s) => order.includes(s ?? ''))).toBe(true);
    expect(text).toMatch(/^## \d+\.\d+\.\d+/m);
  });

  it('every dependency is pinned to one version', () => {
    const loose = projectFiles
      .filter((f) => f.endsWith('package.json'))
      .flatMap((f) => {
        const parsed = JSON.parse(read(f)) as Record<string, Record<string, string> | undefined>;
        const all = { ...parsed.dependencies, ...parsed.devDependencies };
        return Object.entries(all)
          .filter(([, v]) => /^[\^~*]|latest/.test(v))
          .map(([n, v]) => `${f}: ${n} ${v}`);
      });
    expect(loose).toEqual([]);
  });
});
