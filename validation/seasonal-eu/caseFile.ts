import { europeanSeason } from '@kneewall/engine/season';
import { z } from 'zod';
import { plainCases } from '../src/plainCases.ts';
import type { Row } from '../src/row.ts';

/** °C and W. */
const point = z.object({ outdoor: z.number(), most: z.number(), least: z.number(), cop: z.number().positive() });
const inputs = z.object({
  climate: z.enum(['average', 'colder']),
  design: z.number(),
  cyclic: z.number().default(0.25),
  points: z.array(point).min(2),
});

/** Cases of the European bin method: kWh of heat, electricity and backup, and the seasonal factor. */
export const measureCase = (file: unknown): Row[] =>
  plainCases(file, 'seasonal-eu', inputs, ({ climate, design, cyclic, points }) => {
    const rising = [...points].sort((a, b) => a.outdoor - b.outdoor);
    const { heat, input, backup, ratio } = europeanSeason(rising, climate, design, cyclic);
    return {
      heat: heat / 1000,
      electricity: (input + backup) / 1000,
      backup: backup / 1000,
      'seasonal factor': ratio,
    };
  });
