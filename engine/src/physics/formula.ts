/**
 * Evaluates the arithmetic that workings are written in, so that a test can hold the shown formula against the number
 * that was computed: + - * / ^ ( ), names of inputs, numbers, and a few functions. Throws on anything else.
 */
export function evaluateFormula(formula: string, inputs: Readonly<Record<string, number>>): number {
  const tokens = formula.match(/\d+\.?\d*(?:e[-+]?\d+)?|[A-Za-zΑ-ω_Δ][\wΑ-ωΔ′]*|[-+*/^(),]/gi) ?? [];
  if (tokens.join('') !== formula.replace(/\s+/g, '')) throw new Error(`formula not understood: ${formula}`);
  const state = { tokens, at: 0, inputs };
  const value = sum(state);
  if (state.at < tokens.length) throw new Error(`formula goes on after its end: ${formula}`);
  return value;
}

type State = { readonly tokens: readonly string[]; at: number; readonly inputs: Readonly<Record<string, number>> };

const functions: Readonly<Record<string, (...x: number[]) => number>> = {
  sqrt: Math.sqrt,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  min: Math.min,
  max: Math.max,
  abs: Math.abs,
  sin: Math.sin,
  cos: Math.cos,
  atan: Math.atan,
};

function sum(s: State): number {
  let value = product(s);
  for (let t = s.tokens[s.at]; t === '+' || t === '-'; t = s.tokens[s.at]) {
    s.at++;
    value = t === '+' ? value + product(s) : value - product(s);
  }
  return value;
}

function product(s: State): number {
  let value = power(s);
  for (let t = s.tokens[s.at]; t === '*' || t === '/'; t = s.tokens[s.at]) {
    s.at++;
    value = t === '*' ? value * power(s) : value / power(s);
  }
  return value;
}

function power(s: State): number {
  if (s.tokens[s.at] === '-') {
    s.at++;
    return -power(s);
  }
  const base = atom(s);
  if (s.tokens[s.at] !== '^') return base;
  s.at++;
  return base ** power(s);
}

function atom(s: State): number {
  const t = s.tokens[s.at++];
  if (t === undefined) throw new Error('formula ends too early');
  if (t === '(') return closed(s, sum(s));
  if (/^\d/.test(t)) return Number(t);
  if (s.tokens[s.at] === '(') return call(s, t);
  const value = s.inputs[t];
  if (value === undefined) throw new Error(`formula names an input that was not recorded: ${t}`);
  return value;
}

function call(s: State, name: string): number {
  const f = functions[name];
  if (!f) throw new Error(`formula calls an unknown function: ${name}`);
  s.at++;
  const args = [sum(s)];
  while (s.tokens[s.at] === ',') {
    s.at++;
    args.push(sum(s));
  }
  return closed(s, f(...args));
}

function closed(s: State, value: number): number {
  if (s.tokens[s.at++] !== ')') throw new Error('formula misses a closing bracket');
  return value;
}
