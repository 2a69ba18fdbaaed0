export type Pipe = {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly length_m: number;
  readonly diameter_mm: number;
  readonly roughness_mm: number;
  readonly K: number;
};
export type Node = { readonly id: string; readonly head_m?: number; readonly demand_Lps: number };
export type Results = { readonly flows_Lps?: Record<string, number>; readonly heads_m?: Record<string, number> };
export type NetworkFile = {
  readonly name: string;
  readonly viscosity: number;
  readonly nodes: readonly Node[];
  readonly pipes: readonly Pipe[];
  readonly colebrook: Results;
  readonly engine: Results;
};

type Plain = Readonly<Record<string, unknown>>;
const isPlain = (x: unknown): x is Plain => typeof x === 'object' && x !== null && !Array.isArray(x);

/**
 * A network out of a case file. Everything that is wrong with it is gathered, each with its place, and thrown as one
 * message: a field missing or of the wrong type, a size that is not positive, a name twice, an end that is no node.
 */
export function readNetwork(file: unknown): NetworkFile {
  const faults: string[] = [];
  const whole = plainAt(file, 'the file', faults);
  const nodes = listAt(whole, 'nodes', faults).map((x, i) => readNode(x, `nodes/${i}`, faults));
  const pipes = listAt(whole, 'pipes', faults).map((x, i) => readPipe(x, `pipes/${i}`, faults));
  const viscosity = numberAt(whole, 'kinematic_viscosity_m2s', '', faults, 'above 0');
  namesOnce(nodes, 'nodes', faults);
  namesOnce(pipes, 'pipes', faults);
  const known = new Set(nodes.map((n) => n.id));
  pipes.forEach((p, i) => {
    for (const end of ['from', 'to'] as const)
      if (!known.has(p[end])) faults.push(`pipes/${i}/${end}: no node is named "${p[end]}"`);
  });
  const results = isPlain(whole.results) ? whole.results : {};
  const read: NetworkFile = {
    name: typeof whole.name === 'string' ? whole.name : 'network',
    viscosity,
    nodes,
    pipes,
    colebrook: readResults(results.colebrook, 'results/colebrook', pipes, nodes, faults),
    engine: readResults(results.engine, 'results/engine', pipes, nodes, faults),
  };
  if (faults.length > 0) throw new Error(faults.join('; '));
  return read;
}

function plainAt(x: unknown, place: string, faults: string[]): Plain {
  if (isPlain(x)) return x;
  faults.push(`${place}: must be an object`);
  return {};
}

function listAt(x: Plain, field: string, faults: string[]): readonly unknown[] {
  const found = x[field];
  if (Array.isArray(found) && found.length > 0) return found;
  faults.push(`${field}: must be a list with at least one entry`);
  return [];
}

type Bound = 'any' | '0 or more' | 'above 0';
const within: Record<Bound, (x: number) => boolean> = {
  any: () => true,
  '0 or more': (x) => x >= 0,
  'above 0': (x) => x > 0,
};

function numberAt(x: Plain, field: string, place: string, faults: string[], bound: Bound, otherwise?: number): number {
  const found = x[field] ?? otherwise;
  if (typeof found === 'number' && Number.isFinite(found) && within[bound](found)) return found;
  const wanted = bound === 'any' ? 'a number' : `a number ${bound}`;
  const shown = found === undefined ? 'it is missing' : `found ${JSON.stringify(found)}`;
  faults.push(`${place === '' ? '' : `${place}/`}${field}: must be ${wanted}, ${shown}`);
  return Number.NaN;
}

function nameAt(x: Plain, field: string, place: string, faults: string[]): string {
  const found = x[field];
  if (typeof found === 'string' && found !== '') return found;
  faults.push(`${place}/${field}: must be a name`);
  return '';
}

function readNode(x: unknown, place: string, faults: string[]): Node {
  const node = plainAt(x, place, faults);
  const held = node.type === 'fixed_head';
  if (!held && node.type !== 'junction' && node.type !== undefined)
    faults.push(`${place}/type: must be "fixed_head" or "junction", found ${JSON.stringify(node.type)}`);
  const head = held || (node.type === undefined && node.head_m !== undefined);
  return {
    id: nameAt(node, 'id', place, faults),
    ...(head ? { head_m: numberAt(node, 'head_m', place, faults, 'any') } : {}),
    demand_Lps: numberAt(node, 'demand_Lps', place, faults, 'any', 0),
  };
}

function readPipe(x: unknown, place: string, faults: string[]): Pipe {
  const pipe = plainAt(x, place, faults);
  return {
    id: nameAt(pipe, 'id', place, faults),
    from: nameAt(pipe, 'from', place, faults),
    to: nameAt(pipe, 'to', place, faults),
    length_m: numberAt(pipe, 'length_m', place, faults, '0 or more'),
    diameter_mm: numberAt(pipe, 'diameter_mm', place, faults, 'above 0'),
    roughness_mm: numberAt(pipe, 'roughness_mm', place, faults, '0 or more'),
    K: numberAt(pipe, 'K', place, faults, '0 or more', 0),
  };
}

function namesOnce(all: readonly { readonly id: string }[], place: string, faults: string[]): void {
  const seen = new Set<string>();
  all.forEach(({ id }, i) => {
    if (seen.has(id)) faults.push(`${place}/${i}/id: the name "${id}" is there twice`);
    seen.add(id);
  });
}

function readResults(
  x: unknown,
  place: string,
  pipes: readonly Pipe[],
  nodes: readonly Node[],
  faults: string[],
): Results {
  if (x === undefined) return {};
  const whole = plainAt(x, place, faults);
  const values = (field: string, names: ReadonlySet<string>): Record<string, number> => {
    const all = whole[field] === undefined ? {} : plainAt(whole[field], `${place}/${field}`, faults);
    for (const id of Object.keys(all)) {
      numberAt(all, id, `${place}/${field}`, faults, 'any');
      if (!names.has(id)) faults.push(`${place}/${field}/${id}: nothing has that name`);
    }
    return all as Record<string, number>;
  };
  return {
    flows_Lps: values('flows_Lps', new Set(pipes.map((p) => p.id))),
    heads_m: values('heads_m', new Set(nodes.map((n) => n.id))),
  };
}
