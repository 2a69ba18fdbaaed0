import type { Project } from '@kneewall/project';
import ternLedge from '../tern-ledge.json' with { type: 'json' };
import winterReadings from '../winter-after-readings.json' with { type: 'json' };
import { type ReadAt, ternLedgeAfter } from './ternLedgeAfter.ts';

/** The demo as it is opened: Tern Ledge with what `npm run -s winter-after` wrote. */
export const winterAfter = (): Project =>
  ternLedgeAfter(ternLedge as unknown as Project, winterReadings as unknown as ReadAt);
