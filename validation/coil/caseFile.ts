import { apparatusDewPoint, bypassAt, bypassFactor, heatGivenUp, transferUnits } from '@kneewall/engine';
import { humidityRatio, saturationRatio } from '@kneewall/engine/physics';
import { z } from 'zod';
import { plainCases } from '../src/plainCases.ts';
import type { Row } from '../src/row.ts';

/** °C, and one of: relative humidity 0 to 1, wet bulb °C, dew point °C, kg/kg. */
const air = z.union([
  z.strictObject({ t: z.number(), rh: z.number() }),
  z.strictObject({ t: z.number(), wetBulb: z.number() }),
  z.strictObject({ t: z.number(), dewPoint: z.number() }),
  z.strictObject({ t: z.number(), w: z.number() }),
]);
const inputs = z.object({
  entering: air,
  leaving: air,
  pressure: z.number().positive(),
  /** Another flow as a share of this one. */
  flowShare: z.number().positive().default(1),
});

/** Cases of a coil: its surface, bypass and sensible share, and the bypass at another flow. */
export const measureCase = (file: unknown): Row[] =>
  plainCases(file, 'coil', inputs, ({ entering, leaving, pressure, flowShare }) => {
    const [a, b] = [entering, leaving].map((x) => ({ t: x.t, w: humidityRatio(x, pressure) }));
    if (!a || !b) throw new Error('a case needs entering and leaving air');
    const surface = apparatusDewPoint(a, b, pressure);
    const bypass = bypassFactor(a.t, b.t, surface);
    const { sensible, latent } = heatGivenUp(a, b, 1);
    const other = bypassAt(transferUnits(bypass), flowShare);
    return {
      'humidity entering': a.w,
      'humidity leaving': b.w,
      'apparatus dew point': surface,
      'humidity at the surface': saturationRatio(surface, pressure),
      'bypass factor': bypass,
      'sensible share': sensible / (sensible + latent),
      'transfer units at the flow': transferUnits(other),
      'bypass factor at the flow': other,
    };
  });
