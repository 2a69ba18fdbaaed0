import * as z from 'zod/mini';
import { candidates } from './candidates.ts';
import { house } from './house.ts';
import { logs } from './logs.ts';
import { paperwork } from './paperwork.ts';
import { power } from './power.ts';
import { readings, visits } from './readings.ts';
import { about, items, photos, work } from './record.ts';
import { routes } from './routes.ts';
import { site } from './site.ts';

/** The version this program writes. Older documents are migrated step by step, newer ones open read-only. */
export const schemaVersion = 1;

const shape = {
  schema: z.literal(schemaVersion),
  about,
  site,
  house,
  candidates,
  routes,
  power,
  items,
  work,
  visits,
  readings,
  logs,
  paperwork,
  photos,
};

/** One document: everything known, chosen, bought and read. Nothing computed is stored in it. */
export const projectSchema = z.looseObject(shape) as unknown as z.ZodMiniObject<typeof shape>;

/** A project as it stands in a file: every field may be absent. */
export type Project = z.infer<typeof projectSchema>;

export const emptyProject: Project = { schema: schemaVersion };
