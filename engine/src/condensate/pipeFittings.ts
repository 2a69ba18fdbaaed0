import type { CondensateResult } from './result.ts';

/** Slack so that a stretch of just two lengths has one coupling. */
const slack = 1e-9;

/** Couplings where pipe lengths end within a run, and elbows where a stretch begins or ends. Common practice, no source. */
export function pipeFittings(
  runs: readonly number[],
  stretches: number,
  length: number,
): { readonly couplings: number; readonly elbows: number } {
  const joints = runs.reduce((a, run) => a + Math.max(0, Math.ceil(run / length - slack) - 1), 0);
  return { couplings: joints, elbows: stretches > 0 ? stretches + 1 : 0 };
}

/** The drain stretch by stretch; one piece where its stretches are not the whole of it. m. */
export function drawnRuns(
  stretches: CondensateResult['stretches'],
  run: number,
): readonly { readonly name: string; readonly run: number }[] {
  const all = stretches.ok ? stretches.value.filter((x) => x.run > 0) : [];
  const sum = all.reduce((a, x) => a + x.run, 0);
  const whole = all.length > 0 && Math.abs(sum - run) < 1e-6;
  return whole ? all.map((x) => ({ name: x.name === '' ? 'Drain' : x.name, run: x.run })) : [{ name: 'Drain', run }];
}
