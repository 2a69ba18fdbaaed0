import { highsSolver } from '@kneewall/engine';

/** The solver of linear programmes, loaded when a job first needs it. */
export async function loadSolver(): Promise<ReturnType<typeof highsSolver>> {
  const { default: load } = await import('highs');
  return highsSolver(await load());
}
