import { highsSolver } from '@kneewall/engine';
import load from 'highs';
import program from 'highs/runtime?url';

/** The solver of linear programmes: 1.2 MB compressed, so that nobody fetches it who does not ask for what needs it. */
export const loadSolver = async (): Promise<ReturnType<typeof highsSolver>> =>
  highsSolver(await load({ locateFile: () => program }));
