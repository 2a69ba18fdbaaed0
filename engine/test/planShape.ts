import type { Plan } from '../src/index.ts';

/** What of a plan is kept as a fixture: each finding's status and likely value, and the agreed points. */
export function planShape(plan: Plan): Record<string, unknown> {
  const likely = (v: Plan['findings'][number]['value']) => (v === undefined || typeof v === 'number' ? v : v.likely);
  return {
    findings: Object.fromEntries(
      plan.findings.map((f) => [
        f.id,
        { status: f.status, holdPoint: f.holdPoint, unit: f.unit, likely: likely(f.value) },
      ]),
    ),
    heating: pointShape(plan.agreement.heating),
    cooling: pointShape(plan.agreement.cooling),
  };
}

function pointShape(p: Plan['agreement']['heating']): Record<string, number> | undefined {
  if (!p) return undefined;
  const { flow, staticPressure, entering, leaving, attic, sensible, delivered } = p;
  return { flow, staticPressure, entering, leaving, attic, sensible, delivered };
}
