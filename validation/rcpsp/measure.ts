import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Row, ValidationSource } from '../src/row.ts';
import { handRows } from './handCases.ts';
import { rowsOfInstance } from './published.ts';

const folder = new URL('./instances/', import.meta.url);

const bare = (name: string): string => name.replace(/\.(sm|rcp|txt)$/i, '');

/** Published optima beside the instances: file name and periods. */
function optimaIn(file: URL | string): Map<string, number> {
  if (!existsSync(file)) return new Map();
  const lines = readFileSync(file, 'utf8').split(/\r?\n/).slice(1);
  return new Map(
    lines.flatMap((l) => {
      const [name, optimum] = l.split(',').map((x) => x.trim());
      return name && optimum && /^\d+$/.test(optimum) ? [[name, Number(optimum)] as const] : [];
    }),
  );
}

function instanceRows(): Row[] {
  const optima = optimaIn(new URL('optimum.csv', folder));
  return [...optima].flatMap(([name, optimum]) =>
    rowsOfInstance(bare(name), readFileSync(new URL(name, folder), 'utf8'), { optimum }),
  );
}

export const source: ValidationSource = {
  id: 'rcpsp',
  title: 'Published scheduling problems, and a crew by hand',
  measure: () => [...instanceRows(), ...handRows()],
  measureCase: (file, beside, name = 'case') => {
    if (typeof file !== 'string') throw new Error('an instance is a text, .sm or .rcp');
    const optima = [...optimaIn(join(beside, 'optimum.csv'))];
    const [, optimum] = optima.find(([of]) => bare(of).toLowerCase() === bare(name).toLowerCase()) ?? [];
    return rowsOfInstance(bare(name), file, { optimum, told: true });
  },
};
