import { type Finding, formulaTitle, knownTitle, plainNumber, type Step } from '@kneewall/engine';
import { type Project, pathLabel } from '@kneewall/project';
import { type Block, bold, lead, page, small } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** How each number comes about, finding by finding, in the units it was worked out in. */
export function workingPages({ plan, project }: SetInput): Block[] {
  const shown = new Set<string>();
  const worked = plan.findings.filter((f) => {
    const fresh = !shown.has(f.working) && (plan.workings[f.working]?.length ?? 0) > 0;
    if (fresh) shown.add(f.working);
    return fresh;
  });
  return [
    page('Workings'),
    lead(
      'From the likely values, in the units of the calculation: m, m², Pa, m³/s, W, °C unless another stands there.',
    ),
    ...worked.map((f) => one(f, plan.workings[f.working] ?? [], project)),
  ];
}

const one = ({ what }: Finding, steps: readonly Step[], project: Project): Block => ({
  stack: [{ text: what, style: 'small', bold: true }, ...steps.map((step) => small(lineOf(step, project)))],
  unbreakable: steps.length < 12,
  margin: [0, 0, 0, 5],
});

function lineOf(step: Step, project: Project) {
  const { symbol, formula, inputs, value, unit, source } = step;
  const words = formulaTitle[formula];
  const from = Object.entries(inputs).map(([name, n]) => `${name} = ${plainNumber(n)}`);
  const known = step.known ? `, ${knownTitle[step.known]}` : '';
  return [
    `${symbol} = ${words === undefined ? `${formula} = ` : ''}`,
    bold(`${plainNumber(value)} ${unit}`.trimEnd()),
    from.length === 0 ? '' : `   with ${from.join(', ')}`,
    words === undefined
      ? `   [${source}]`
      : `   ${step.path ? pathLabel(step.path, project) : `${words} [${source}]`}${known}`,
  ];
}
